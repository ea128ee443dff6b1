import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goredElbow } from '../../../src/duct/gored-elbow.ts';
import { mitreBend } from '../../../src/duct/mitre-bend.ts';
import { smoothBend } from '../../../src/duct/smooth-bend.ts';

const right = Math.PI / 2;
const turn = fc.double({ min: 0, max: right, noNaN: true });
const radius = fc.double({ min: 0.5, max: 10, noNaN: true });
const usualFactor = 0.02;
const inAir = (k: { fixed: number; frictional: number }) => k.fixed + k.frictional * usualFactor;

describe('smooth bend', () => {
  it('turns nothing for nothing', () => {
    expect(smoothBend(0, 1.5)).toEqual({ fixed: 0, frictional: 0 });
  });

  it('is never below the friction of its centre line', () => {
    fc.assert(
      fc.property(turn, radius, (angle, r) => {
        expect(smoothBend(angle, r).frictional).toBeGreaterThanOrEqual(angle * r);
      }),
    );
  });

  it('is kinder the wider it is, from tight to long', () => {
    const losses = [0.5, 0.75, 1, 1.5, 2].map((r) => inAir(smoothBend(right, r)));
    expect(losses).toEqual(losses.toSorted((a, b) => b - a));
  });

  it('refuses a bend that is none', () => {
    expect(() => smoothBend(-0.1, 1)).toThrow('not -0.1');
    expect(() => smoothBend(4, 1)).toThrow('not 4');
    expect(() => smoothBend(1, 0.4)).toThrow('not 0.4');
  });
});

describe('mitre', () => {
  it('rises with its angle, from nothing, to 120° and no further', () => {
    fc.assert(
      fc.property(turn, turn, (one, other) => {
        const [less, more] = one < other ? [one, other] : [other, one];
        expect(mitreBend(more).fixed).toBeGreaterThanOrEqual(mitreBend(less).fixed);
      }),
    );
    expect(mitreBend(0).fixed).toBe(0);
    expect(mitreBend((120 * Math.PI) / 180).fixed).toBeGreaterThan(mitreBend(right).fixed);
    expect(() => mitreBend(2.2)).toThrow('not 2.2');
  });

  it('costs more than a bend of the same angle', () => {
    expect(mitreBend(right).fixed).toBeGreaterThan(3 * inAir(smoothBend(right, 1)));
  });
});

describe('gored elbow', () => {
  it('is better the more pieces and the wider it is', () => {
    for (const r of [1, 1.25, 1.5]) {
      const [three, four, five] = ([3, 4, 5] as const).map((n) => goredElbow(n, r, right).fixed);
      expect(three).toBeGreaterThan(four ?? Number.NaN);
      expect(four).toBeGreaterThan(five ?? Number.NaN);
    }
    expect(goredElbow(4, 1.5, right).fixed).toBeLessThan(goredElbow(4, 1, right).fixed);
  });

  it('lies half way between the tabulated radii at 1.25', () => {
    expect(goredElbow(5, 1.25, right).fixed).toBeCloseTo((0.33 + 0.24) / 2, 12);
  });

  it('goes in proportion to its angle', () => {
    expect(goredElbow(4, 1, right / 3).fixed).toBeCloseTo(0.37 / 3, 12);
    expect(goredElbow(4, 1, 0).fixed).toBe(0);
  });

  it('refuses what is not in the table', () => {
    expect(() => goredElbow(5, 0.75, right)).toThrow('not 0.75');
    expect(() => goredElbow(5, 2, right)).toThrow('not 2');
    expect(() => goredElbow(5, 1, 2)).toThrow('not 2');
    expect(() => goredElbow(7 as 5, 1, right)).toThrow('not 7');
  });
});
