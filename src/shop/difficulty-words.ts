// The difficulties of a state as fixed words: a report's outcome, for programs and people alike.

import type { Difficulty } from '../solve/balance.ts';

/** The outcome of a state about which nothing has to be said. */
export const BALANCED = 'balanced';
/** The difficulty of a state in which every gate is shut. */
export const NOTHING_OPEN = 'nothing open';

/**
 * A difficulty of the solver in the words of a report.
 *
 * @param difficulty - what the solver met
 * @param sectionIds - ids of the sections, in the order of the document
 * @returns the words, the same for the same difficulty
 */
export function difficultyWords(difficulty: Difficulty, sectionIds: readonly string[]): string {
  if (difficulty.kind === 'curve ends') {
    return `curve ends before the crossing: ${difficulty.side} the entered points`;
  }
  if (difficulty.kind === 'did not balance') {
    return `did not balance, worst at ${sectionIds[difficulty.section]}`;
  }
  return difficulty.kind;
}
