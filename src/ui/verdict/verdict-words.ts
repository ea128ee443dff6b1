// The verdicts on a drop, and the word that stands for each.

/** What is said of a drop in the present state of the gates. */
export type Verdict = 'shut' | 'settles' | 'short' | 'tight' | 'carries';

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
