// The lengths at which a function changes its sign, from readings along the way: each change of sign
// is bracketed, and where the function draws near zero and leaves it again, the nearest approach is
// looked at as well.

import { findRoot } from '../math/bracket-root.ts';

/** How near a root is found [m]. */
export const LENGTH_TOLERANCE = 1e-7;
/** Steps of the search for a nearest approach; each leaves 0.618 of the interval. */
const APPROACH_STEPS = 24;

/** A function at one length. */
export interface Reading {
  /** The length [m]. */
  readonly length: number;
  /** Its value there, in any unit. */
  readonly excess: number;
  /** What it changes by a little further on, in the same unit. */
  readonly ahead: number;
}

/**
 * Lengths at which a function that has been read at some of them changes its sign.
 * @param excess - the function of a length [m]
 * @param readings - its readings by rising length
 * @returns the lengths to 1e-7 m, by rising length [m]
 */
export function lengthRoots(
  excess: (length: number) => number,
  readings: readonly Reading[],
): number[] {
  const roots: number[] = [];
  const between = (low: number, high: number) => {
    const outcome = findRoot(excess, low, high, LENGTH_TOLERANCE);
    if (outcome.kind === 'found') roots.push(outcome.root);
  };
  for (let k = 1; k < readings.length; k++) {
    const [from, to] = [readings[k - 1]!, readings[k]!];
    const side = from.excess >= 0 ? 1 : -1;
    if (from.excess >= 0 !== to.excess >= 0) between(from.length, to.length);
    else if (side * from.ahead < 0 && side * to.ahead > 0) {
      const distance = (length: number) => side * excess(length);
      const nearest = nearestApproach(distance, from.length, to.length);
      if (nearest === undefined) continue;
      between(from.length, nearest);
      between(nearest, to.length);
    }
  }
  return roots;
}

/** Golden section for a length at which the function is below zero, if its dip reaches there. */
function nearestApproach(
  distance: (length: number) => number,
  from: number,
  to: number,
): number | undefined {
  const part = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  let [left, right] = [high - part * (high - low), low + part * (high - low)];
  let [atLeft, atRight] = [distance(left), distance(right)];
  for (let i = 0; i < APPROACH_STEPS; i++) {
    if (atLeft < 0) return left;
    if (atRight < 0) return right;
    if (atLeft < atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - part * (high - low);
      atLeft = distance(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + part * (high - low);
      atRight = distance(right);
    }
  }
  return undefined;
}
