// Where a figure lies over many cases, and in how many something holds.

import { quantile } from '../../math/quantile.ts';

/** Between which values a figure lies: of 20 cases 1 is below the low, 1 above the high one. */
export interface Band {
  readonly low: number;
  readonly median: number;
  readonly high: number;
}

const BAND = [0.05, 0.5, 0.95] as const;

/**
 * Between which values a figure lies.
 *
 * @param values - the figure in each case, any unit [-]
 * @returns low, middle and high, in that unit
 */
export function bandOf(values: Float64Array): Band {
  const sorted = values.toSorted();
  const [low, median, high] = BAND;
  return {
    low: quantile(sorted, low),
    median: quantile(sorted, median),
    high: quantile(sorted, high),
  };
}

/**
 * The part of cases in which something holds.
 *
 * @param cases - the cases
 * @param holds - whether it holds in one
 * @returns from 0 to 1 [-]
 */
export function shareOf<Case>(cases: readonly Case[], holds: (each: Case) => boolean): number {
  return cases.length === 0 ? 1 : cases.filter(holds).length / cases.length;
}
