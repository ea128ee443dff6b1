// A piecewise cubic given by a value and a slope at each knot.
// Between knots it is the one cubic that meets both ends; outside it goes on straight.

/** Knots `x` in rising order, the value `y` and the slope there. All three have one length ≥ 2. */
export interface HermiteSpline {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly slope: Float64Array;
}

/**
 * The height of the spline at `x`. Allocates nothing; the piece is found by halving.
 *
 * Exact at every knot, continuous everywhere, straight along the end slopes outside the knots.
 *
 * @param spline - the knots, values and slopes
 * @param x - where to read it [-]
 * @returns the value there [-]
 * @throws RangeError if `x` is not a finite number
 * @example
 * valueAt({ x: [0, 1], y: [2, 4], slope: [2, 2] }, 0.25); // => 2.5
 * valueAt({ x: [0, 1], y: [2, 4], slope: [2, 2] }, 3); // => 8
 */
export function valueAt(spline: HermiteSpline, x: number): number {
  const i = pieceAt(spline.x, x);
  const start = at(spline.x, i);
  const run = x - start;
  if (isOutside(spline.x, i, run)) return at(spline.y, i) + at(spline.slope, i) * run;

  const width = at(spline.x, i + 1) - start;
  const chord = (at(spline.y, i + 1) - at(spline.y, i)) / width;
  const first = at(spline.slope, i);
  const twist = first + at(spline.slope, i + 1) - 2 * chord;
  const t = run / width;
  return at(spline.y, i) + run * (first + t * (chord - first - twist + t * twist));
}

/**
 * The slope of the spline at `x`. Allocates nothing; continuous everywhere.
 *
 * @param spline - the knots, values and slopes
 * @param x - where to read it [-]
 * @returns dy/dx there [-]; the end slope outside the knots
 * @throws RangeError if `x` is not a finite number
 * @example
 * slopeAt({ x: [0, 1], y: [0, 1], slope: [0, 0] }, 0.5); // => 1.5
 */
export function slopeAt(spline: HermiteSpline, x: number): number {
  const i = pieceAt(spline.x, x);
  const start = at(spline.x, i);
  const run = x - start;
  if (isOutside(spline.x, i, run)) return at(spline.slope, i);

  const width = at(spline.x, i + 1) - start;
  const chord = (at(spline.y, i + 1) - at(spline.y, i)) / width;
  const first = at(spline.slope, i);
  const twist = first + at(spline.slope, i + 1) - 2 * chord;
  const t = run / width;
  return first + t * (2 * (chord - first - twist) + 3 * t * twist);
}

/**
 * Height and slope of the spline at `x` in one reading, for loops that need both.
 *
 * @param spline - the knots, values and slopes
 * @param x - where to read it [-]
 * @param out - receives the value [-] and the slope [-], shape (2)
 * @throws RangeError if `x` is not a finite number
 */
export function readSpline(spline: HermiteSpline, x: number, out: Float64Array): void {
  const i = pieceAt(spline.x, x);
  const start = at(spline.x, i);
  const run = x - start;
  const first = at(spline.slope, i);
  if (isOutside(spline.x, i, run)) {
    out[0] = at(spline.y, i) + first * run;
    out[1] = first;
    return;
  }
  const width = at(spline.x, i + 1) - start;
  const chord = (at(spline.y, i + 1) - at(spline.y, i)) / width;
  const twist = first + at(spline.slope, i + 1) - 2 * chord;
  const bend = chord - first - twist;
  const t = run / width;
  out[0] = at(spline.y, i) + run * (first + t * (bend + t * twist));
  out[1] = first + t * (2 * bend + 3 * t * twist);
}

/** The last knot at or left of `x`; the first knot if `x` lies left of them all. */
function pieceAt(knots: Float64Array, x: number): number {
  if (!Number.isFinite(x)) throw new RangeError(`A spline can't be read at ${x}.`);
  let low = 0;
  let high = knots.length;
  while (high - low > 1) {
    const middle = (low + high) >>> 1;
    if (at(knots, middle) <= x) low = middle;
    else high = middle;
  }
  return low;
}

function isOutside(knots: Float64Array, piece: number, run: number): boolean {
  return run < 0 || piece === knots.length - 1;
}

/** Typed arrays never hold holes; the index is always inside by construction. */
function at(array: Float64Array, index: number): number {
  return array[index] as number;
}
