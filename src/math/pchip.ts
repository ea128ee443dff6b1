// Monotone cubic interpolation: a smooth line through every point that makes no hump of its own.
// Sources:
// 1. F. N. Fritsch, J. Butland, "A method for constructing local monotone piecewise cubic
//    interpolants", SIAM J. Sci. Stat. Comput. 5 (1984) 300-304: slopes at inner points.
// 2. C. Moler, Numerical Computing with MATLAB (2004), section 3.6: the three-point end slope.
// 3. scipy.interpolate.PchipInterpolator follows both; its numbers are reproduced here.

import type { HermiteSpline } from './hermite.ts';

/**
 * The spline through the points (x, y) that rises where they rise and falls where they fall.
 *
 * It passes through every point, never leaves the range of the two neighbouring points, and has
 * a continuous slope. Two points give a straight line.
 *
 * @param x - knots, finite, strictly rising, at least two [-]
 * @param y - one finite value a knot [-]
 * @returns the spline, with arrays of its own
 * @throws RangeError for fewer than two points, unequal lengths, a number that is not finite,
 *   knots that do not rise, or points too steep for a number to hold
 * @example
 * pchip([0, 1, 2], [0, 1, 4]).slope[1]; // => 1.5
 */
export function pchip(x: ArrayLike<number>, y: ArrayLike<number>): HermiteSpline {
  const knots = Float64Array.from(x);
  const values = Float64Array.from(y);
  requirePoints(knots, values);

  const last = knots.length - 1;
  const width = new Float64Array(last);
  const chord = new Float64Array(last);
  for (let i = 0; i < last; i++) {
    width[i] = at(knots, i + 1) - at(knots, i);
    chord[i] = (at(values, i + 1) - at(values, i)) / at(width, i);
    if (!Number.isFinite(chord[i])) {
      throw new RangeError(`The step from ${values[i]} to ${values[i + 1]} is too steep to draw.`);
    }
  }

  const slope = new Float64Array(last + 1);
  if (last === 1) {
    slope.fill(at(chord, 0));
    return { x: knots, y: values, slope };
  }
  for (let i = 1; i < last; i++) {
    slope[i] = innerSlope(at(width, i - 1), at(width, i), at(chord, i - 1), at(chord, i));
  }
  slope[0] = endSlope(at(width, 0), at(width, 1), at(chord, 0), at(chord, 1));
  slope[last] = endSlope(
    at(width, last - 1),
    at(width, last - 2),
    at(chord, last - 1),
    at(chord, last - 2),
  );
  return { x: knots, y: values, slope };
}

/** Weighted harmonic mean of the two chords; flat at a peak, a dip or beside a flat piece. */
function innerSlope(widthBefore: number, widthAfter: number, before: number, after: number) {
  if (!(before > 0 && after > 0) && !(before < 0 && after < 0)) return 0;
  const weightBefore = 2 * widthAfter + widthBefore;
  const weightAfter = widthAfter + 2 * widthBefore;
  return (weightBefore + weightAfter) / (weightBefore / before + weightAfter / after);
}

/** The parabola through the three outermost points, held back where it would bend the wrong way. */
function endSlope(width: number, nextWidth: number, chord: number, nextChord: number) {
  const slope = ((2 * width + nextWidth) * chord - width * nextChord) / (width + nextWidth);
  if (Math.sign(slope) !== Math.sign(chord)) return 0;
  if (Math.sign(chord) !== Math.sign(nextChord) && Math.abs(slope) > 3 * Math.abs(chord)) {
    return 3 * chord;
  }
  return slope;
}

function requirePoints(x: Float64Array, y: Float64Array): void {
  if (x.length !== y.length) {
    throw new RangeError(`${x.length} knots can't go with ${y.length} values.`);
  }
  if (x.length < 2) throw new RangeError(`A line needs two points; there are ${x.length}.`);
  for (let i = 0; i < x.length; i++) {
    if (!Number.isFinite(x[i])) throw new RangeError(`Knot ${i} is ${x[i]}, not a number.`);
    if (!Number.isFinite(y[i])) throw new RangeError(`Value ${i} is ${y[i]}, not a number.`);
    if (i > 0 && at(x, i) <= at(x, i - 1)) {
      throw new RangeError(`Knots must rise, but ${x[i]} follows ${x[i - 1]}.`);
    }
  }
}

function at(array: Float64Array, index: number): number {
  return array[index] as number;
}
