import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type HermiteSpline, readSpline, slopeAt, valueAt } from '../../../src/math/hermite.ts';

/** x³ − x from −1 to 2, with an odd knot inside: one cubic, so the spline must be it. */
const cubic: HermiteSpline = {
  x: Float64Array.of(-1, 0.25, 2),
  y: Float64Array.of(0, -0.234375, 6),
  slope: Float64Array.of(2, -0.8125, 11),
};

const height = fc.double({ min: -100, max: 100, noNaN: true }).map((y) => y + 0);
const spline = fc
  .array(fc.tuple(fc.double({ min: 0.1, max: 3, noNaN: true }), height, height), {
    minLength: 2,
    maxLength: 9,
  })
  .map((knots): HermiteSpline => {
    let x = -4;
    return {
      x: Float64Array.from(knots, ([step]) => (x += step)),
      y: Float64Array.from(knots, ([, y]) => y),
      slope: Float64Array.from(knots, ([, , slope]) => slope),
    };
  });

describe('a Hermite spline', () => {
  it.each([-1, -0.5, 0, 0.25, 0.9, 1.999, 2])('is the cubic it was taken from at %f', (x) => {
    expect(valueAt(cubic, x)).toBeCloseTo(x * x * x - x, 13);
    expect(slopeAt(cubic, x)).toBeCloseTo(3 * x * x - 1, 13);
  });

  it('goes on straight outside its knots', () => {
    expect(valueAt(cubic, -3)).toBe(-4);
    expect(slopeAt(cubic, -3)).toBe(2);
    expect(valueAt(cubic, 4)).toBe(28);
    expect(slopeAt(cubic, 4)).toBe(11);
  });

  it('meets each knot from both sides with the same value and slope', () => {
    fc.assert(
      fc.property(spline, (s) => {
        s.x.forEach((knot, i) => {
          expect(valueAt(s, knot)).toBe(s.y[i]);
          expect(slopeAt(s, knot)).toBe(s.slope[i]);
          for (const near of [knot - 1e-9, knot + 1e-9]) {
            // Slopes reach 6000 and second derivatives 1.5e5 for these knots: 1e-9 moves them so.
            expect(Math.abs(valueAt(s, near) - s.y[i]!)).toBeLessThan(1e-5);
            expect(Math.abs(slopeAt(s, near) - s.slope[i]!)).toBeLessThan(1e-3);
          }
        });
      }),
    );
  });

  it('has the slope of its own values', () => {
    fc.assert(
      fc.property(spline, fc.double({ min: -5, max: 20, noNaN: true }), (s, x) => {
        const step = 1e-5;
        const difference = (valueAt(s, x + step) - valueAt(s, x - step)) / (2 * step);
        // Central difference: half a step of a jump in a curvature of at most 1.5e5.
        expect(Math.abs(difference - slopeAt(s, x))).toBeLessThan(1);
      }),
    );
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('refuses to be read at %f', (x) => {
    expect(() => valueAt(cubic, x)).toThrow(RangeError);
    expect(() => slopeAt(cubic, x)).toThrow(String(x));
  });
});

describe('a reading of both', () => {
  it('is the value and the slope that are read one by one, inside and outside the knots', () => {
    const spline = {
      x: Float64Array.of(0, 1, 3),
      y: Float64Array.of(2, 4, 1),
      slope: Float64Array.of(1, 0.5, -2),
    };
    const out = new Float64Array(2);
    for (const x of [-1, 0, 0.4, 1, 2.9, 3, 7]) {
      readSpline(spline, x, out);
      expect(out[0]).toBeCloseTo(valueAt(spline, x), 12);
      expect(out[1]).toBeCloseTo(slopeAt(spline, x), 12);
    }
  });
});
