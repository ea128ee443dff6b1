import { describe, expect, it } from 'vitest';
import { otherUnitRows } from '../../../../src/state/collector/other-unit-rows.ts';
import { rowDoubts, strayPoint } from '../../../../src/state/collector/row-doubts.ts';
import { exampleCurves } from '../../../../src/shop/example-curves.ts';

const CFM = 4.719474432e-4;
const INCH = 249.08891;
/** An invented curve that falls evenly, in cfm and in. w.g. */
const EVEN: readonly (readonly [number, number])[] = [
  [0, 10.5],
  [200, 10.3],
  [400, 9.8],
  [600, 9.1],
  [800, 8.1],
  [1000, 6.6],
  [1200, 4.3],
];
const pointsOf = (pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([flow, pressure]) => ({ flow: flow * CFM, pressure: pressure * INCH }));
const sorted = (pairs: readonly (readonly [number, number])[]) =>
  pointsOf(pairs.toSorted((a, b) => a[0] - b[0]));

describe('doubts about points', () => {
  it('are none about an even curve, nor about any example', () => {
    expect([...rowDoubts(pointsOf(EVEN), 'us')]).toEqual([]);
    for (const { points, name } of exampleCurves()) {
      const words = [...rowDoubts(points, 'metric').values()].map((doubt) => doubt.words);
      // One of them has a hump on purpose, and is told so.
      expect(words.length > 0, name).toBe(name.includes('hump'));
      expect(words.every((each) => each.includes('have such a hump'))).toBe(true);
    }
  });

  it('find each single reading that is a tenth of the curve too high or too low', () => {
    for (let at = 1; at < EVEN.length - 1; at++) {
      for (const by of [-1.2, 1.2]) {
        const [flow, pressure] = EVEN[at]!;
        const points = pointsOf(EVEN.with(at, [flow, pressure + by]));
        const doubts = rowDoubts(points, 'us');
        expect([...doubts.keys()], `${flow} cfm by ${by}`).toEqual([at]);
        expect(doubts.get(at)!.words).toMatch(by > 0 ? / above the line / : / below the line /);
        expect(strayPoint(points)!.fitting / INCH).toBeCloseTo(pressure, 0);
      }
    }
  });

  it('point at a pressure that rises, which may be a hump', () => {
    const rise = pointsOf([
      [0, 10],
      [400, 8],
      [800, 5],
      [1200, 6],
    ]);
    expect([...rowDoubts(rise, 'us').keys()]).toEqual([3]);
    expect(rowDoubts(rise, 'us').get(3)!.words).toMatch(
      /rises here from 5\.00.in\. w\.g\. to 6\.00/,
    );
  });

  it('find flows in m³/h among cfm, and say what they are', () => {
    // 600 cfm is 1,019 m³/h and 1,000 cfm is 1,699 m³/h.
    const points = sorted(EVEN.map(([q, p]) => [q === 600 ? 1019 : q === 1000 ? 1699 : q, p]));
    const doubts = otherUnitRows(points, 'us');
    const found = [...doubts.keys()].map((at) => Math.round(points[at]!.flow / CFM));
    expect(found.toSorted((a, b) => a - b)).toEqual([1019, 1699]);
    const [first] = [...doubts.values()];
    expect(first!.words).toMatch(/was meant in m³\/h, it is (600|1,000).cfm/);
    expect(first!.remedies[0]).toMatchObject({ kind: 'replace' });
  });

  it('find pressures in Pa among in. w.g., also where they stand at the end', () => {
    // 8.1 in. w.g. is 2,018 Pa; in the other direction 1,071 Pa was typed as 4.3.
    const high = pointsOf(EVEN.with(4, [800, 2018]));
    expect([...otherUnitRows(high, 'us').keys()]).toEqual([4]);
    const low = [2615, 2566, 2441, 2267, 8.1, 6.6, 4.3].map((pressure, i) => ({
      flow: 0.1 * i,
      pressure,
    }));
    expect([...otherUnitRows(low, 'metric').keys()]).toEqual([4, 5, 6]);
    expect(otherUnitRows(low, 'metric').get(4)!.words).toMatch(/was meant in in\. w\.g\./);
  });
});
