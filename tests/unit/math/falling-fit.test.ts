import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fallingFit } from '../../../src/math/falling-fit.ts';
import { fitKnots } from '../../../src/math/fit-knots.ts';
import { type HermiteSpline, slopeAt, valueAt } from '../../../src/math/hermite.ts';

const x = Float64Array.from({ length: 11 }, (_, i) => i / 10);
const heights = fc.array(fc.double({ min: 0, max: 2500, noNaN: true }), {
  minLength: 11,
  maxLength: 11,
});

/** 200 slopes from end to end. */
function slopesOf(line: HermiteSpline): number[] {
  const low = line.x[0]!;
  const width = line.x[line.x.length - 1]! - low;
  return Array.from({ length: 201 }, (_, i) => slopeAt(line, low + (width * i) / 200));
}

function sumOfSquares(
  line: HermiteSpline,
  places: ArrayLike<number>,
  y: ArrayLike<number>,
): number {
  return Array.from(places).reduce((sum, place, i) => sum + (valueAt(line, place) - y[i]!) ** 2, 0);
}

/** A quadratic spline of the same class from any slopes at the knots; built here, from its definition. */
function lineOf(knots: Float64Array, start: number, slope: readonly number[]): HermiteSpline {
  const y = [start];
  for (let i = 1; i < knots.length; i++) {
    y.push(y[i - 1]! + ((slope[i]! + slope[i - 1]!) / 2) * (knots[i]! - knots[i - 1]!));
  }
  return { x: knots, y: Float64Array.from(y), slope: Float64Array.from(slope) };
}

describe('the shape of the line', () => {
  it('never rises past its peak, and its bend changes sides once at most', () => {
    fc.assert(
      fc.property(heights, fc.integer({ min: 1, max: 9 }), (y, pieces) => {
        const slopes = slopesOf(fallingFit(x, y, pieces));
        // Slopes are up to some 1e5; what is allowed is their rounding.
        const firstFall = slopes.findIndex((slope) => slope < -1e-7);
        const beyond = firstFall < 0 ? [] : slopes.slice(firstFall);
        expect(Math.max(...beyond, -1)).toBeLessThan(1e-7);
        const bends = slopes.slice(1).map((slope, i) => slope - slopes[i]!);
        const signs = bends.filter((bend) => Math.abs(bend) > 1e-6).map(Math.sign);
        const changes = signs.filter((sign, i) => i > 0 && sign !== signs[i - 1]).length;
        expect(changes).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('has its peak as a knot', () => {
    const line = fallingFit([0, 1, 2, 3], [0, 3, 4, 3], 1);
    const peak = Array.from(line.slope).indexOf(0);
    expect(line.x[peak]).toBeCloseTo(2, 12);
    expect(line.y[peak]).toBeCloseTo(4, 12);
  });
});

describe('data that have the shape already', () => {
  it('are reproduced: a parabola by any number of pieces', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9 }),
        fc.double({ min: 500, max: 4000, noNaN: true }),
        fc.double({ min: 100, max: 9000, noNaN: true }),
        fc.double({ min: -500, max: 500, noNaN: true }),
        (pieces, top, fall, tilt) => {
          const y = x.map((place) => top + tilt * place - fall * place ** 2);
          const line = fallingFit(x, y, pieces);
          for (const place of [0, 0.03, 0.51, 0.77, 1]) {
            expect(valueAt(line, place)).toBeCloseTo(top + tilt * place - fall * place ** 2, 6);
          }
        },
      ),
    );
  });

  it.each([
    ['one peak', [900, -200, -900, -1500, -4000]],
    ['a tail that flattens', [-100, -1500, -3000, -1200, -300]],
    ['a plateau before the fall', [-2500, -900, -100, -1500, -4200]],
    ['a straight line', [-1000, -1000, -1000, -1000, -1000]],
  ])('are reproduced: %s', (_, slopes) => {
    const knots = fitKnots(x, 4);
    const y = x.map((place) => valueAt(lineOf(knots, 2300, slopes), place));
    expect(Math.sqrt(sumOfSquares(fallingFit(x, y, 4), x, y))).toBeLessThan(1e-6);
  });

  it('pass through two points as a straight line', () => {
    const line = fallingFit([0.4, 0.1], [100, 400]);
    expect(valueAt(line, 0.2)).toBeCloseTo(300, 9);
    expect(valueAt(line, 0.35)).toBeCloseTo(150, 9);
  });
});

describe('the closest line', () => {
  const competitor = fc.record({
    start: fc.double({ min: 0, max: 2500, noNaN: true }),
    least: fc.double({ min: 0, max: 3000, noNaN: true }),
    steps: fc.array(fc.double({ min: 0, max: 3000, noNaN: true }), { minLength: 4, maxLength: 4 }),
    turn: fc.integer({ min: 0, max: 4 }),
    bend: fc.constantFrom('down then up', 'up then down'),
  });

  it('is no farther from the points than any other of its shape', () => {
    const knots = fitKnots(x, 4);
    fc.assert(
      fc.property(heights, competitor, (y, { start, least, steps, turn, bend }) => {
        const slopes = [-least, -least, -least, -least, -least];
        if (bend === 'down then up') {
          for (let i = 3; i >= 0; i--) slopes[i] = slopes[i + 1]! + (i < turn ? 1 : -1) * steps[i]!;
        } else {
          for (let i = turn - 1; i >= 0; i--) slopes[i] = slopes[i + 1]! - steps[i]!;
          for (let i = turn; i < 4; i++) slopes[i + 1] = slopes[i]! - steps[i]!;
        }
        const other = sumOfSquares(lineOf(knots, start, slopes), x, y);
        // Sums are up to some 1e8 Pa², so this allows their rounding and no more.
        expect(sumOfSquares(fallingFit(x, y, 4), x, y)).toBeLessThanOrEqual(other + 1e-3);
      }),
      { numRuns: 1000 },
    );
  });

  it('does not get closer by any small change that keeps the shape', () => {
    fc.assert(
      fc.property(
        heights,
        fc.integer({ min: 0, max: 4 }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        (y, knot, push) => {
          const knots = fitKnots(x, 4);
          const best = fallingFit(x, y, 4);
          const slopes = Array.from(knots, (place) => slopeAt(best, place));
          slopes[knot]! += push;
          const bends = slopes.slice(1).map((value, i) => value - slopes[i]!);
          const concave = bends.every((bend) => bend <= 0);
          fc.pre(concave);
          const level = valueAt(best, 0);
          const least = sumOfSquares(best, x, y);
          for (const lift of [-1, -0.1, 0, 0.1, 1]) {
            const moved = lineOf(knots, level + lift, slopes);
            expect(sumOfSquares(moved, x, y)).toBeGreaterThanOrEqual(least - 1e-3);
          }
        },
      ),
    );
  });

  it('is at least as close as a straight line that falls', () => {
    fc.assert(
      fc.property(heights, (y) => {
        const straight = lineOf(Float64Array.of(0, 1), 2000, [-1500, -1500]);
        expect(sumOfSquares(fallingFit(x, y), x, y)).toBeLessThanOrEqual(
          sumOfSquares(straight, x, y) + 1e-6,
        );
      }),
    );
  });
});

describe('what must not matter', () => {
  const scale = fc.double({ min: 1e-4, max: 1e4, noNaN: true });

  it('the units', () => {
    fc.assert(
      fc.property(heights, scale, scale, (y, across, up) => {
        const line = fallingFit(x, y);
        const other = fallingFit(
          x.map((place) => across * place),
          y.map((value) => up * value),
        );
        for (const place of [0, 0.21, 0.5, 0.93]) {
          expect(valueAt(other, across * place) / up).toBeCloseTo(valueAt(line, place), 4);
        }
      }),
    );
  });

  it('the order', () => {
    fc.assert(
      fc.property(heights, fc.shuffledSubarray([...x.keys()], { minLength: 11 }), (y, order) => {
        const line = fallingFit(x, y);
        const other = fallingFit(
          order.map((i) => x[i]!),
          order.map((i) => y[i]!),
        );
        for (const place of [0, 0.21, 0.5, 0.93]) {
          expect(valueAt(other, place)).toBeCloseTo(valueAt(line, place), 4);
        }
      }),
    );
  });

  it('a reading that is there twice, when all are', () => {
    const y = [2000, 2055, 2040, 2085, 2030, 1960, 1790, 1600, 1290, 930, 510];
    const once = fallingFit(x, y, 4);
    const twice = fallingFit([...x, ...x], [...y, ...y], 4);
    for (const place of [0, 0.21, 0.5, 0.93]) {
      expect(valueAt(twice, place)).toBeCloseTo(valueAt(once, place), 7);
    }
  });
});

describe('what makes no line', () => {
  it.each([
    ['no points', [], [], undefined, '0 at 0'],
    ['one place', [3, 3, 3], [1, 2, 3], undefined, '3 at 3'],
    ['a place that is NaN', [0, Number.NaN], [1, 2], undefined, 'NaN'],
    ['a value that is endless', [0, 1], [1, Number.POSITIVE_INFINITY], undefined, 'Infinity'],
    ['too few values', [0, 1, 2], [1, 2], undefined, '2 values'],
    ['half a piece', [0, 1, 2], [1, 2, 3], 0.5, '0.5'],
  ])('is refused, with the value: %s', (_, places, values, pieces, says) => {
    expect(() => fallingFit(places, values, pieces)).toThrow(RangeError);
    expect(() => fallingFit(places, values, pieces)).toThrow(says);
  });
});
