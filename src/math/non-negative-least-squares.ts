// Least squares with variables that must not be negative.
// Sources:
// 1. C. L. Lawson, R. J. Hanson, Solving Least Squares Problems (1974), ch. 23: the active-set method.
// 2. scipy.optimize.nnls solves the same; its numbers are reproduced in the tests.

import { solveLeastSquares } from './least-squares.ts';

/** A gain below this part of the largest possible one is rounding. */
const ROUNDING = 1e-12;

/**
 * The x that brings `columns · x` closest to the target, none of its variables below zero but the
 * first few, which are free.
 *
 * The sum of squares is the least that is possible under these bounds. Where several x reach it,
 * one with few variables above zero is given.
 *
 * @param columns - one a variable, all as long as the target, shape (variables)(rows) [-]
 * @param target - shape (rows) [-]
 * @param free - how many of the first variables may be negative; their columns must not depend on
 *   one another [-]
 * @returns x, shape (variables) [-]
 * @throws RangeError if the lengths differ, a number is not finite, or the free columns depend on
 *   one another
 * @example
 * solveNonNegative([[1, 0], [0, 1]], [3, -2], 0)[1]; // => 0
 * solveNonNegative([[1, 0], [0, 1]], [-3, 2], 1)[0]; // => -3
 */
export function solveNonNegative(
  columns: readonly ArrayLike<number>[],
  target: ArrayLike<number>,
  free: number,
): Float64Array {
  const x = new Float64Array(columns.length);
  const used = columns.map((_, i) => i < free);
  if (!settle(columns, target, used, free, x)) {
    throw new RangeError(`The ${free} free columns depend on one another.`);
  }
  const refused = new Set<number>();
  for (let round = 0; round < 10 * columns.length; round++) {
    const entering = mostGain(columns, target, used, refused, x);
    if (entering === undefined) break;
    const before = { x: x.slice(), used: used.slice() };
    used[entering] = true;
    if (settle(columns, target, used, free, x) && used[entering]) {
      refused.clear();
      continue;
    }
    // The column adds nothing but rounding to those in use: back, and try the next.
    refused.add(entering);
    x.set(before.x);
    before.used.forEach((use, i) => {
      used[i] = use;
    });
  }
  return x;
}

/**
 * Moves x to the best for the variables in use; those that would fall below zero on the way stop
 * there and are used no longer. False where the columns in use depend on one another.
 */
function settle(
  columns: readonly ArrayLike<number>[],
  target: ArrayLike<number>,
  used: boolean[],
  free: number,
  x: Float64Array,
): boolean {
  for (;;) {
    const index = used.flatMap((use, i) => (use ? [i] : []));
    const best = solveLeastSquares(
      index.map((i) => columns[i]!),
      target,
    );
    if (best === undefined) return false;
    let step = 1;
    index.forEach((variable, k) => {
      if (variable < free || at(best, k) > 0) return;
      const from = at(x, variable);
      step = Math.min(step, from > 0 ? from / (from - at(best, k)) : 0);
    });
    let stopped = 0;
    index.forEach((variable, k) => {
      x[variable] = at(x, variable) + step * (at(best, k) - at(x, variable));
      if (variable < free || at(best, k) > 0 || at(x, variable) > ROUNDING * -at(best, k)) return;
      x[variable] = 0;
      used[variable] = false;
      stopped++;
    });
    if (stopped === 0) return true;
  }
}

/** The unused variable along which the sum of squares falls most steeply, if it falls at all. */
function mostGain(
  columns: readonly ArrayLike<number>[],
  target: ArrayLike<number>,
  used: readonly boolean[],
  refused: ReadonlySet<number>,
  x: Float64Array,
): number | undefined {
  const gap = Float64Array.from(target);
  columns.forEach((column, i) => {
    for (let row = 0; row < gap.length; row++) gap[row]! -= at(column, row) * at(x, i);
  });
  const whole = Math.sqrt(dot(target, target));
  let most: number | undefined;
  let gain = 0;
  columns.forEach((column, i) => {
    if (used[i] === true || refused.has(i)) return;
    const length = Math.sqrt(dot(column, column));
    const slope = length > 0 ? dot(column, gap) / length : 0;
    if (slope <= Math.max(gain, ROUNDING * whole)) return;
    gain = slope;
    most = i;
  });
  return most;
}

function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += at(a, i) * at(b, i);
  return sum;
}

function at(array: ArrayLike<number>, index: number): number {
  return array[index] as number;
}
