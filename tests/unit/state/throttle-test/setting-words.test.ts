import { describe, expect, it } from 'vitest';
import { reduceSetting } from '../../../../src/curve/throttle-test/reduce-setting.ts';
import type {
  AirReading,
  Instruments,
  ThrottleSetting,
  ThrottleTest,
} from '../../../../src/curve/throttle-test/throttle-test.ts';
import { settingWords, unstatedWords } from '../../../../src/state/throttle-test/setting-words.ts';
import { doubtLines, stepLines } from '../../../../src/state/throttle-test/step-lines.ts';

/** A bore of 0.02 m² and 1.2 kg/m³: 10 m/s are 720 m³/h and 60 Pa. */
const test: ThrottleTest = {
  diameter: 0.15957691216057307,
  air: { kind: 'density', density: 1.2 },
  centre: { factor: 0.8 },
  instruments: {},
  rows: [],
};
const exact = (fraction: number): Instruments => ({ static: { fraction }, velocity: { fraction } });
const reduced = (air: AirReading, rest: Partial<ThrottleSetting> = {}, from = test) =>
  reduceSetting(from, { id: 'a', static: 1060, air, ...rest });
const speed = { kind: 'velocity', reading: 12.5 } as const;
const plain = (text: string) => text.replace(/[\u2009\u202f]/g, ' ');
const words = (...given: Parameters<typeof reduced>) =>
  plain(settingWords(reduced(...given), 'metric'));

describe('a setting in words', () => {
  it.each([
    ['a point', speed, {}, '720 m³/h at 1 000 Pa'],
    [
      'speed over range',
      { ...speed, overRange: true } as const,
      {},
      'Over range: at least 720 m³/h, at most 1 000 Pa. Kept as a bound, not used as a point.',
    ],
    [
      'tap over range',
      speed,
      { staticOverRange: true } as const,
      'Over range: 720 m³/h, at least 1 000 Pa. Kept as a bound, not used as a point.',
    ],
    [
      'both over range',
      { ...speed, overRange: true } as const,
      { staticOverRange: true } as const,
      'Over range: at least 720 m³/h, suction unknown. Kept as a bound, not used as a point.',
    ],
    [
      'nothing read',
      { kind: 'velocity' } as const,
      {},
      'Still to be read: one reading of the air.',
    ],
    [
      'too little suction',
      speed,
      { static: 50 },
      'The speed stands for 60 Pa of velocity pressure, more than the 50 Pa of suction that drives it. One of the two readings is wrong.',
    ],
  ])('%s', (_, air, rest, expected) => {
    expect(words(air, rest)).toBe(expected);
  });

  it('tells how far it may be off, once that is stated', () => {
    // 10 % as a limit is 10 %·2/√3 at 95 %: 83 of 720 m³/h.
    const doubtful = { ...test, instruments: exact(0.1) };
    expect(words(speed, {}, doubtful)).toMatch(/^720 m³\/h ± 83 m³\/h at 1 000 Pa ± \d+ Pa$/);
    expect(unstatedWords([reduced(speed, {}, doubtful)])).toBe('');
  });

  it('names the instruments that count as exact', () => {
    expect(unstatedWords([reduced(speed)])).toContain(
      'the manometer at the tap and the anemometer are',
    );
    expect(unstatedWords([reduced({ kind: 'closed' })])).toContain('the manometer at the tap is');
  });
});

describe('the steps of a setting', () => {
  const linesOf = (air: AirReading, from = test) => {
    const setting = reduced(air, {}, from);
    if (setting.kind !== 'point') throw new Error(setting.kind);
    return stepLines(setting.steps, 'metric').map(({ what, result }) => [what, plain(result)]);
  };

  it('lead from one speed to flow and suction', () => {
    expect(linesOf(speed)).toEqual([
      ['Density of the air', '1.200 kg/m³'],
      ['Area of the bore', '0.02000 m²'],
      ['Mean speed', '10.0 m/s'],
      ['Velocity pressure', '60 Pa'],
      ['Flow', '720 m³/h'],
      ['Total suction', '1 000 Pa'],
    ]);
  });

  it('show the speeds behind velocity pressures, and behind speeds for another density', () => {
    const pressures = { kind: 'velocity-pressure-traverse', readings: [15, 135] } as const;
    expect(linesOf(pressures)).toContainEqual(['Speeds', '5.0, 15.0 m/s']);
    const thermal = { ...test, instruments: { velocityDensity: 0.6 } };
    expect(linesOf(speed, thermal)).toContainEqual(['Speed', '6.3 m/s']);
  });

  it('are short where the pipe was closed', () => {
    expect(linesOf({ kind: 'closed' }).map(([what]) => what)).toEqual([
      'Density of the air',
      'Flow',
      'Total suction',
    ]);
  });

  it('are followed by what makes the point doubtful, the most first', () => {
    const doubtful = { ...test, diameterTolerance: 0.0001, instruments: exact(0.1) };
    const setting = reduced(speed, {}, doubtful);
    if (setting.kind !== 'point') throw new Error(setting.kind);
    const lines = doubtLines(setting.uncertainty, 'metric');
    expect(lines).toHaveLength(3);
    expect(lines.find(({ what }) => what.includes('speed'))?.how).toContain('83');
    expect(lines.at(-1)?.what).toBe('± by the inside diameter');
  });
});
