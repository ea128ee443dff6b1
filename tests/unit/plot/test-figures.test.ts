import { describe, expect, it } from 'vitest';
import { reduceSetting } from '../../../src/curve/throttle-test/reduce-setting.ts';
import type { ThrottleTest } from '../../../src/curve/throttle-test/throttle-test.ts';
import { powerFigures } from '../../../src/plot/power-figures.ts';
import { testFigures } from '../../../src/plot/test-figures.ts';

/** A bore of 0.02 m² and 1.2 kg/m³: 10 m/s are 720 m³/h and 60 Pa. */
const test: ThrottleTest = {
  diameter: 0.15957691216057307,
  air: { kind: 'density', density: 1.2 },
  centre: { factor: 0.8 },
  instruments: { static: { fraction: 0.01 }, velocity: { fraction: 0.02 } },
  rows: [],
};
const plain = (rows: readonly (readonly string[])[]) =>
  rows.map((row) => row.map((cell) => cell.replace(/[\u2009\u202f]/g, ' ')));

describe('the figures of a test', () => {
  it('have a row a setting, with a remark where it is no point', () => {
    const speed = { kind: 'velocity', reading: 12.5 } as const;
    const settings = [
      reduceSetting(test, { id: 'a', static: 1060, air: speed }),
      reduceSetting(test, { id: 'b', static: 1060, air: { ...speed, overRange: true } }),
      reduceSetting(test, { id: 'c', air: speed }),
    ];
    const { columns, rows } = testFigures(settings, 'metric');
    const [point, bound, unread] = plain(rows);
    expect(rows.every((row) => row.length === columns.length)).toBe(true);
    expect(point!.slice(0, 5)).toEqual(['1', '1 060', '10.0', '60', '720']);
    expect(point!.slice(6, 7)).toEqual(['1 000']);
    expect(point![5]).not.toBe('–');
    expect(point!.at(-1)).toBe('');
    expect(bound!.at(-1)).toMatch(/^Over range: at least 720 m³\/h/);
    expect(bound![5]).toBe('–');
    expect(unread!.slice(1, 8)).toEqual(Array.from({ length: 7 }, () => '–'));
    expect(unread!.at(-1)).toMatch(/^Still to be read/);
  });
});

describe('the figures of power', () => {
  it('are as exact as in their fields', () => {
    const { columns, rows } = powerFigures([{ flow: 0.5, power: 2237.1 }], 'us');
    expect(columns.map(({ unit }) => unit)).toEqual(['cfm', 'hp']);
    expect(Number(rows[0]![0]!.replace(',', ''))).toBeCloseTo(0.5 * 2118.88, 0);
    expect(Number(rows[0]![1])).toBeCloseTo(3, 2);
  });
});
