// The difficulties of a state as sentences, to stand where the numbers stand: nothing that is
// extrapolated, doubtful or unbalanced goes unsaid.

import type { StateReport } from './state-report.ts';

const SENTENCES: ReadonlyMap<string, string> = new Map([
  ['nothing open', ''],
  ['no suction', 'The collector gives no suction as it runs now, so no air moves.'],
  [
    'curve ends before the crossing: above the entered points',
    'The operating point lies beyond the last entered point of the curve: it is extrapolated.',
  ],
  [
    'curve ends before the crossing: below the entered points',
    'The operating point lies before the first entered point of the curve: it is extrapolated.',
  ],
  [
    'several crossings',
    'The curve meets the ducts at more than one flow; this is the steady one with the most air.',
  ],
  [
    'left of the peak',
    'The collector runs left of the peak of its curve, where the flow may pulse and the curve is unreliable.',
  ],
]);

/**
 * A sentence for each difficulty of a state. That nothing is open is left to the state's own
 * sentence.
 *
 * @param report - the difficulties of one state of the gates
 * @returns sentences, none if all is well
 */
export function difficultySentences(report: Pick<StateReport, 'difficulties'>): readonly string[] {
  return report.difficulties
    .map((words) => SENTENCES.get(words) ?? `The ducts ${words}: these numbers are no answer.`)
    .filter((text) => text !== '');
}
