// What may be off, and by how much, as a reader may say.

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
