// What a page and the worker that answers its questions say to each other.

import type { Progress } from '../../study/progress.ts';
import type { AnswerOn, QuestionOn, Subject } from './question.ts';

/** A question with its number. */
export interface Asking<S extends Subject = Subject> {
  readonly kind: 'ask';
  /** Counted up by the page; what is said of an earlier one is stale. */
  readonly number: number;
  readonly subject: S;
  readonly question: QuestionOn<S>;
}

export type ToWorker = Asking | { readonly kind: 'cancel'; readonly number: number };

export type FromWorker =
  | { readonly kind: 'progress'; readonly number: number; readonly progress: Progress }
  /** Some rows of the answer that follows, in their order. */
  | { readonly kind: 'rows'; readonly number: number; readonly rows: readonly unknown[] }
  /** The answer, without the rows that went before. */
  | { readonly kind: 'answer'; readonly number: number; readonly answer: AnswerOn<Subject> }
  /** The question can't be answered, and why. */
  | { readonly kind: 'refused'; readonly number: number; readonly reason: string }
  | { readonly kind: 'cancelled'; readonly number: number };
