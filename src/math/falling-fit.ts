// A smooth line between scattered points that keeps a shape: it may rise to one peak, falls beyond
// it, and changes the side to which it bends once at most.
// Sources:
// 1. Quadratic splines: C. de Boor, A Practical Guide to Splines (1978), ch. VI and IX (from memory,
//    unverified). Their slope is straight between knots, so a bound on the slope at the knots is a
//    bound everywhere.

import type { HermiteSpline } from './hermite.ts';
import { fold, type SmallSystem } from './least-squares.ts';
import { solveNonNegative } from './non-negative-least-squares.ts';
import { type SlopeShape, slopeShapes } from './slope-shape.ts';
import { fitKnots } from './fit-knots.ts';

/** A shape with a change of bend must be better by this part of the whole to be taken. */
const BETTER = 1e-10;

/**
 * The line of a shape that lies closest to the points by the sum of squares of y.
 *
 * It is a quadratic spline with a continuous slope, written as cubics. Its peak, where it has one
 * between knots, is a knot too. Beyond the peak it never rises. It bends one way throughout, or
 * changes from one way to the other at one knot and then falls to its end. Of all such lines over
 * these knots it is the closest; that search is complete, not a descent. The order of the points
 * and the units of x and y change nothing but rounding.
 *
 * @param x - where, finite, in any order, repeated at will; at least two different [-]
 * @param y - one finite value each [-]
 * @param pieces - most pieces between knots, a whole number from 1; fewer are used where the
 *   points can't bear them [-]
 * @returns the spline, from the lowest to the highest x
 * @throws RangeError for unequal lengths, a number that is not finite, fewer than two different x,
 *   or a number of pieces that is not a whole number above zero
 */
export function fallingFit(
  x: ArrayLike<number>,
  y: ArrayLike<number>,
  pieces?: number,
): HermiteSpline {
  const knots = fitKnots(x, pieces);
  const values = Float64Array.from(y);
  if (values.length !== x.length) {
    throw new RangeError(`${x.length} places can't go with ${values.length} values.`);
  }
  const low = values.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY);
  const high = values.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY);
  if (!Number.isFinite(high - low))
    throw new RangeError(`Not all of ${values.join(', ')} are numbers.`);
  const height = high > low ? high - low : 1;
  const start = knots[0]!;
  const width = knots[knots.length - 1]! - start;
  const places = Float64Array.from(x, (place) => (place - start) / width);
  const unit = knots.map((knot) => (knot - start) / width);
  const line = closest(
    unit,
    places,
    values.map((value) => (value - low) / height),
  );
  const peaked = withPeak(line);
  return {
    x: peaked.x.map((place, i) =>
      i === peaked.x.length - 1 ? knots[knots.length - 1]! : start + width * place,
    ),
    y: peaked.y.map((value) => low + height * value),
    slope: peaked.slope.map((slope) => (slope * height) / width),
  };
}

/** The best line of all shapes, for x and y from 0 to 1. */
function closest(knots: Float64Array, x: Float64Array, y: Float64Array): HermiteSpline {
  const system = fold([new Float64Array(x.length).fill(1), ...risesOf(knots, x)], y);
  let best:
    | { readonly sum: number; readonly slopes: Float64Array; readonly start: number }
    | undefined;
  for (const shape of slopeShapes(knots.length)) {
    const found = closestOfShape(system, shape);
    if (best === undefined || found.sum < best.sum - BETTER) best = found;
  }
  return splineOf(knots, best!.start, best!.slopes);
}

function closestOfShape(system: SmallSystem, shape: SlopeShape) {
  const [level, ...rises] = system.columns;
  const columns = shape.parts.map((part) => combination(rises, part));
  const solution = solveNonNegative([level!, ...columns], system.target, 1 + shape.free);
  const slopes = combination(shape.parts, solution.subarray(1));
  const gap = combination([level!, ...columns], solution);
  const sum = gap.reduce((total, value, row) => total + (value - system.target[row]!) ** 2, 0);
  return { sum, slopes, start: solution[0]! };
}

/** How far the line has risen at each x, for a slope of 1 at one knot that fades to its neighbours. */
function risesOf(knots: Float64Array, x: Float64Array): Float64Array[] {
  return Array.from(knots, (_, i) => x.map((place) => rise(knots, i, place)));
}

function rise(knots: Float64Array, i: number, x: number): number {
  const knot = knots[i]!;
  const before = knots[i - 1] ?? knot;
  const after = knots[i + 1] ?? knot;
  const up = Math.min(Math.max(x - before, 0), knot - before);
  const down = Math.min(Math.max(x - knot, 0), after - knot);
  const climbed = knot > before ? up ** 2 / (2 * (knot - before)) : 0;
  return climbed + (after > knot ? down - down ** 2 / (2 * (after - knot)) : 0);
}

function combination(columns: readonly Float64Array[], weights: ArrayLike<number>): Float64Array {
  const sum = new Float64Array(columns[0]?.length ?? 0);
  columns.forEach((column, i) => {
    for (let row = 0; row < sum.length; row++) sum[row]! += column[row]! * weights[i]!;
  });
  return sum;
}

function splineOf(x: Float64Array, start: number, slope: Float64Array): HermiteSpline {
  const y = new Float64Array(x.length).fill(start);
  for (let i = 1; i < x.length; i++) {
    y[i] = y[i - 1]! + ((slope[i - 1]! + slope[i]!) / 2) * (x[i]! - x[i - 1]!);
  }
  return { x, y, slope };
}

/** Makes the peak a knot where it lies between two, so that whoever looks at knots finds it. */
function withPeak(line: HermiteSpline): HermiteSpline {
  const { x, y, slope } = line;
  const i = slope.findIndex((value, k) => value > 0 && (slope[k + 1] ?? 0) < 0);
  if (i < 0) return line;
  const first = slope[i]!;
  const run = ((x[i + 1]! - x[i]!) * first) / (first - slope[i + 1]!);
  const peak = x[i]! + run;
  if (!(peak > x[i]! && peak < x[i + 1]!)) return line;
  const between = (list: Float64Array, value: number) =>
    Float64Array.of(...list.subarray(0, i + 1), value, ...list.subarray(i + 1));
  return {
    x: between(x, peak),
    y: between(y, y[i]! + (first / 2) * run),
    slope: between(slope, 0),
  };
}
