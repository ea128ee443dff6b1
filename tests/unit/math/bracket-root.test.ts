import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findRoot } from '../../../src/math/bracket-root.ts';

/** The root, or a failure of the test. */
function rootOf(f: (x: number) => number, low: number, high: number, tolerance: number) {
  const outcome = findRoot(f, low, high, tolerance);
  if (outcome.kind !== 'found') throw new Error(`${outcome.kind}: ${JSON.stringify(outcome)}`);
  return outcome;
}

describe('findRoot', () => {
  // Alefeld, Potra and Shi, ACM Transactions on Mathematical Software 21 (1995) 327-344, and
  // Chandrupatla (1997) use functions like these; the roots are known in closed form.
  it.each([
    ['cubic with a flat start', (x: number) => x ** 3 - 8, 0, 10, 2],
    ['steep exponential', (x: number) => Math.exp(x) - 1e10, 0, 700, Math.log(1e10)],
    ['pole just outside', (x: number) => 1 / (x + 1e-3) - 4, 0, 10, 0.249],
    ['arctangent, far off', (x: number) => Math.atan(x - 3), -1e6, 1e7, 3],
    ['square-root start', (x: number) => Math.sqrt(x) - 0.5, 0, 100, 0.25],
    ['root at the low end', (x: number) => x, 0, 1, 0],
    ['root at the high end', (x: number) => x - 1, 0, 1, 1],
  ])('%s', (_name, f, low, high, root) => {
    // Two units in the last place of the root, and what f itself loses by rounding there.
    expect(Math.abs(rootOf(f, low, high, 0).root - root)).toBeLessThanOrEqual(1e-15 * (1 + root));
  });

  it('needs far fewer evaluations than halving where the function is smooth', () => {
    // Halving 10 to 2e-16 takes 56.
    expect(rootOf((x) => x ** 3 - 8, 0, 10, 0).iterations).toBeLessThan(20);
  });

  it('finishes in bounded time on a ninth-order root, where interpolation is no help', () => {
    const { root, iterations } = rootOf((x) => (x - 0.3) ** 9, -1, 4, 1e-12);
    expect(Math.abs(root - 0.3)).toBeLessThanOrEqual(1e-12 + 1e-12);
    // A halving at least every fourth step: 4·log2(5/1e-12) is 170.
    expect(iterations).toBeLessThan(170);
  });

  it('finds the jump of a step', () => {
    const { root } = rootOf((x) => (x < 0.7 ? -1 : 5), 0, 1, 1e-9);
    expect(Math.abs(root - 0.7)).toBeLessThanOrEqual(1e-9);
  });

  it('takes an infinite value by its sign', () => {
    const { root } = rootOf((x) => (x === 0 ? Number.POSITIVE_INFINITY : 1 / x - 2), 0, 4, 0);
    expect(root).toBeCloseTo(0.5, 15);
  });

  it('says when both ends have the same sign, and gives the values', () => {
    expect(findRoot((x) => x + 1, 0, 2, 1e-9)).toEqual({
      kind: 'no-sign-change',
      atLow: 1,
      atHigh: 3,
    });
  });

  it('never looks outside the bracket, and ends within the tolerance of the sign change', () => {
    const brackets = fc.record({
      root: fc.double({ min: -50, max: 50, noNaN: true }),
      below: fc.double({ min: 1e-6, max: 100, noNaN: true }),
      above: fc.double({ min: 1e-6, max: 100, noNaN: true }),
      power: fc.constantFrom(1, 3, 5, 1 / 3),
      bend: fc.double({ min: 0, max: 20, noNaN: true }),
      tolerance: fc.constantFrom(1e-3, 1e-7, 1e-11),
    });
    fc.assert(
      fc.property(brackets, ({ root, below, above, power, bend, tolerance }) => {
        const low = root - below;
        const high = root + above;
        const f = (x: number) => {
          expect(x).toBeGreaterThanOrEqual(low);
          expect(x).toBeLessThanOrEqual(high);
          const far = x - root;
          return Math.sign(far) * Math.abs(far) ** power * (1 + bend * Math.max(far, 0));
        };
        const found = rootOf(f, low, high, tolerance);
        // 50 has units in the last place of 7e-15; the offset itself is rounded there.
        expect(Math.abs(found.root - root)).toBeLessThanOrEqual(tolerance + 3e-14);
      }),
      { seed: 1, numRuns: 1000 },
    );
  });

  it('refuses a bracket, a tolerance or a function that is none', () => {
    expect(() => findRoot((x) => x, 1, 0, 0)).toThrow('from 1 to 0');
    expect(() => findRoot((x) => x, 0, Number.POSITIVE_INFINITY, 0)).toThrow(RangeError);
    expect(() => findRoot((x) => x, -1, 1, -1)).toThrow('-1');
    expect(() => findRoot((x) => Math.sqrt(x), -1, 1, 0)).toThrow('at -1');
  });
});
