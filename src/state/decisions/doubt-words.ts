// How sure an answer is, in words, and what may be off by how much.

import { LEAST_CASES } from '../../shop/decisions/doubt.ts';
import { type DoubtRanges, USUAL_DOUBT } from '../../study/doubt-factors.ts';

/** What a reader says of the doubt. */
export interface DoubtForm {
  readonly ranges: DoubtRanges;
  readonly cases: number;
}

/** The doubt to begin with. */
export const USUAL_DOUBT_FORM: DoubtForm = { ranges: USUAL_DOUBT, cases: LEAST_CASES };

/** What may be off, as a field is labelled, and where its usual range comes from. */
export const DOUBTED: readonly {
  readonly key: keyof DoubtRanges;
  readonly label: string;
  readonly hint: string;
}[] = [
  { key: 'fittings', label: 'Bends and fittings, ±', hint: 'common practice, no source' },
  { key: 'hoods', label: 'Hoods, ±', hint: 'common practice, no source' },
  { key: 'wyes', label: 'Wyes, ±', hint: 'common practice, no source' },
  { key: 'gates', label: 'Gates, ±', hint: 'common practice, no source' },
  { key: 'walls', label: 'Walls, of their range', hint: 'smoothest to roughest of the table' },
  { key: 'curve', label: 'The collector’s curve, ±', hint: 'common practice, no source' },
];

/**
 * A share of all cases in words that a reader can picture.
 *
 * @param share - of the cases, 0 to 1 [-]
 * @returns such as 'in 9 of 10 cases'
 */
export function oddsWords(share: number): string {
  if (share >= 1) return 'in every case';
  if (share <= 0) return 'in no case';
  if (share >= 0.97) return 'in nearly every case';
  if (share <= 0.03) return 'in hardly any case';
  const tenths = Math.min(9, Math.max(1, Math.round(10 * share)));
  return `in ${tenths} of 10 cases`;
}
