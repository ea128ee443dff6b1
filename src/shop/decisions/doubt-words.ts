// How sure something is, in words.

import type { Verdict } from '../verdict.ts';

/**
 * In how many cases something holds.
 *
 * @param share - part of the cases, 0 to 1 [-]
 * @returns such as 'in every case', 'in 9 of 10 cases', 'in hardly any case'; rounding never makes all
 *   or none of what is not
 * @example
 * casesWords(0.91); // => 'in 9 of 10 cases'
 */
export function casesWords(share: number): string {
  if (share >= 1) return 'in every case';
  if (share <= 0) return 'in no case';
  if (share > 0.95) return 'in nearly every case';
  if (share < 0.05) return 'in hardly any case';
  return `in ${Math.min(9, Math.max(1, Math.round(10 * share)))} of 10 cases`;
}

/** A verdict that may go on. */
const STILL: Readonly<Partial<Record<Verdict, string>>> = {
  carries: 'still carries',
  tight: 'still carries',
  settles: 'still settles or falls short',
  short: 'still settles or falls short',
};

/**
 * How sure the verdict on a drop is.
 *
 * @param doubt - its verdict with nothing off, and the part of the cases in which it holds [-]
 * @returns such as 'In 9 of 10 cases it still carries.'; empty for a shut drop
 */
export function doubtSentence(doubt: {
  readonly verdict: Verdict;
  readonly holds: number;
}): string {
  const still = STILL[doubt.verdict];
  if (still === undefined) return '';
  const words = casesWords(doubt.holds);
  return `${words.charAt(0).toUpperCase()}${words.slice(1)} it ${still}.`;
}
