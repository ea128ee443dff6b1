// The word that is written for each verdict on a drop.

import type { Verdict } from '../../shop/verdict.ts';

/**
 * The word written beside the shape.
 *
 * @param verdict - what is said of a drop
 * @returns one or two words
 * @example
 * verdictWord('settles'); // => 'settles'
 * verdictWord('short'); // => 'short of air'
 */
export function verdictWord(verdict: Verdict): string {
  return verdict === 'short' ? 'short of air' : verdict;
}
