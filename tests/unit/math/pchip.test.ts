import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { slopeAt, valueAt } from '../../../src/math/hermite.ts';
import { pchip } from '../../../src/math/pchip.ts';

/** Two to twelve points, steps in x from 0.01 to 10, heights to ±5000, some of them equal. */
const points = fc
  .array(
    fc.record({
      step: fc.double({ min: 0.01, max: 10, noNaN: true }),
      y: fc.oneof(
        fc.integer({ min: -3, max: 3 }),
        fc.integer({ min: -5e9, max: 5e9 }).map((n) => n / 1e6),
      ),
    }),
    { minLength: 2, maxLength: 12 },
  )
  .map((steps) => {
    let x = 0;
    return { x: steps.map(({ step }) => (x += step)), y: steps.map(({ y }) => y) };
  });

const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('pchip', () => {
  it('passes through every point', () => {
    fc.assert(
      fc.property(points, ({ x, y }) => {
        const spline = pchip(x, y);
        expect(x.map((knot) => valueAt(spline, knot))).toEqual(y);
      }),
    );
  });

  it('never leaves the range of the two points beside it', () => {
    fc.assert(
      fc.property(points, share, ({ x, y }, t) => {
        const spline = pchip(x, y);
        for (let i = 0; i + 1 < x.length; i++) {
          const value = valueAt(spline, x[i]! + t * (x[i + 1]! - x[i]!));
          // Eight roundings of numbers as large as the step between the two points.
          const rounding = 8 * Number.EPSILON * (Math.abs(y[i]!) + Math.abs(y[i + 1]!));
          expect(value).toBeGreaterThanOrEqual(Math.min(y[i]!, y[i + 1]!) - rounding);
          expect(value).toBeLessThanOrEqual(Math.max(y[i]!, y[i + 1]!) + rounding);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('never turns between two points', () => {
    fc.assert(
      fc.property(points, share, ({ x, y }, t) => {
        const spline = pchip(x, y);
        for (let i = 0; i + 1 < x.length; i++) {
          const rise = y[i + 1]! - y[i]!;
          const width = x[i + 1]! - x[i]!;
          const slope = slopeAt(spline, x[i]! + t * width);
          const rounding = (32 * Number.EPSILON * Math.abs(rise)) / width;
          if (rise >= 0) expect(slope).toBeGreaterThanOrEqual(-rounding);
          if (rise <= 0) expect(slope).toBeLessThanOrEqual(rounding);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('draws two points as a straight line', () => {
    const spline = pchip([1, 3], [10, 4]);
    expect(valueAt(spline, 2)).toBe(7);
    expect(valueAt(spline, 5)).toBe(-2);
  });

  it('is flat at a peak and along points of one height', () => {
    const spline = pchip([0, 1, 2, 3], [1, 5, 2, 2]);
    expect(slopeAt(spline, 1)).toBe(0);
    expect(slopeAt(spline, 2.5)).toBe(0);
    expect(valueAt(spline, 2.5)).toBe(2);
  });

  it('keeps its own copy of the points', () => {
    const y = Float64Array.of(2, 1);
    const spline = pchip([0, 1], y);
    y[0] = 9;
    expect(valueAt(spline, 0)).toBe(2);
  });

  it.each([
    ['no points', [], [], /there are 0/],
    ['one point', [1], [1], /there are 1/],
    ['unequal lengths', [0, 1, 2], [1, 2], /3 knots .* 2 values/],
    ['a knot that is NaN', [0, Number.NaN], [1, 2], /Knot 1 is NaN/],
    ['an infinite value', [0, 1], [1, Number.NEGATIVE_INFINITY], /Value 1 is -Infinity/],
    ['a repeated knot', [0, 1, 1], [1, 2, 3], /1 follows 1/],
    ['falling knots', [0, 2, 1], [1, 2, 3], /1 follows 2/],
    ['a step past all numbers', [0, 1e-300], [0, 1e300], /1e\+300/],
  ])('refuses %s', (_, x, y, message) => {
    expect(() => pchip(x, y)).toThrow(RangeError);
    expect(() => pchip(x, y)).toThrow(message);
  });
});
