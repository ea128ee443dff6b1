// The root of a function between two points where it has opposite signs.
// Inverse quadratic interpolation where that is sure to help, bisection where it is not.
//
// Sources:
//  1. T. R. Chandrupatla, "A new hybrid quadratic/bisection algorithm for finding the zero of a
//     nonlinear function without using derivatives", Advances in Engineering Software 28 (1997)
//     145-149, doi:10.1016/S0965-9978(96)00051-8.
//  2. The rule that forces a bisection after three steps that fail to halve the bracket is ours.

/** How a search ended. */
export type RootOutcome =
  | { readonly kind: 'found'; readonly root: number; readonly iterations: number }
  | { readonly kind: 'no-sign-change'; readonly atLow: number; readonly atHigh: number };

/**
 * The root of a function in a bracket. The function need not be smooth. Where it jumps across
 * zero, the jump is what is found. An infinite value is fine, its sign counts.
 * @param f - the function, of one number
 * @param low - lower end of the bracket [x]
 * @param high - upper end of the bracket, not below `low` [x]
 * @param tolerance - how near the root must be; 0 asks for rounding [x]
 * @returns the root, within `tolerance` or two units in its last place of a change of sign, never
 *   outside the bracket, and the number of evaluations after the first two; or both end values
 *   when they have the same sign
 * @throws RangeError if an end or the tolerance is unusable, or the function returns NaN
 * @example findRoot((x) => x * x - 2, 0, 2, 1e-14).root; // => 1.414213562373
 * @example findRoot((x) => x * x + 1, 0, 2, 1e-14).kind; // => 'no-sign-change'
 */
export function findRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  tolerance: number,
): RootOutcome {
  if (!(Number.isFinite(low) && Number.isFinite(high - low) && low <= high)) {
    throw new RangeError(`not a bracket: from ${low} to ${high}`);
  }
  if (!(tolerance >= 0)) {
    throw new RangeError(`tolerance must be 0 or more, not ${tolerance}`);
  }
  // The root lies between a, the latest point, and b; c is the point that was dropped last.
  let a = high;
  let fa = evaluate(f, a);
  let b = low;
  let fb = evaluate(f, b);
  if (fa !== 0 && fb !== 0 && fa > 0 === fb > 0) {
    return { kind: 'no-sign-change', atLow: fb, atHigh: fa };
  }
  let c = a;
  let fc = fa;
  let step = 0.5;
  let halvedWidth = Math.abs(b - a) / 2;
  let slowSteps = 0;
  for (let iterations = 0; ; iterations += 1) {
    const nearest = Math.abs(fa) < Math.abs(fb) ? a : b;
    const width = Math.abs(b - a);
    const allowed = Math.max(tolerance, 2 * Number.EPSILON * Math.abs(nearest), Number.MIN_VALUE);
    if (fa === 0 || fb === 0 || width <= allowed) {
      return { kind: 'found', root: nearest, iterations };
    }
    if (iterations > 0) {
      slowSteps = width <= halvedWidth ? 0 : slowSteps + 1;
      halvedWidth = width <= halvedWidth ? width / 2 : halvedWidth;
      step = slowSteps >= 3 ? 0.5 : chooseStep(a, fa, b, fb, c, fc);
    }
    const margin = Math.min(0.5, allowed / width / 2);
    const x = a + Math.min(1 - margin, Math.max(margin, step)) * (b - a);
    const fx = evaluate(f, x);
    if (fx > 0 === fa > 0) {
      c = a;
      fc = fa;
    } else {
      c = b;
      fc = fb;
      b = a;
      fb = fa;
    }
    a = x;
    fa = fx;
  }
}

/** Where to look next, as a fraction of the way from a to b (Chandrupatla's criterion). */
function chooseStep(a: number, fa: number, b: number, fb: number, c: number, fc: number): number {
  const xi = (a - b) / (c - b);
  const phi = (fa - fb) / (fc - fb);
  if (!(phi ** 2 < xi && (1 - phi) ** 2 < 1 - xi)) {
    return 0.5;
  }
  const step =
    (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb));
  return Number.isFinite(step) ? step : 0.5;
}

function evaluate(f: (x: number) => number, x: number): number {
  const value = f(x);
  if (Number.isNaN(value)) {
    throw new RangeError(`the function is not a number at ${x}`);
  }
  return value;
}
