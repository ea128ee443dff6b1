// What comes of a pasted text: points, a question to settle first, or why there is nothing to take.

import type { CurvePoint } from '../../curve/curve-data.ts';
import type { UnitName } from '../../units/unit.ts';
import type { ColumnPair } from './choose-columns.ts';

/** What has been answered so far. */
export interface PasteAnswers {
  /** Which of the ways to cut and read the text. */
  readonly way?: string;
  readonly columns?: ColumnPair;
  readonly flowUnit?: UnitName;
  readonly pressureUnit?: UnitName;
}

/** Something that the text leaves open, and the answers that it allows. */
export interface PasteQuestion {
  readonly words: string;
  /** At least two, the likeliest first; each holds all answers so far as well. */
  readonly choices: readonly { readonly words: string; readonly answers: PasteAnswers }[];
}

/** What comes of it. */
export type PasteOutcome =
  /** Nothing that looks like points: a single amount, or words. */
  | { readonly kind: 'no points' }
  | { readonly kind: 'refused'; readonly message: string }
  | { readonly kind: 'question'; readonly question: PasteQuestion }
  | {
      readonly kind: 'points';
      /** In the order of the text. */
      readonly points: readonly CurvePoint[];
      /** How many, in what units, from which columns, and what was passed over. */
      readonly understood: string;
    };
