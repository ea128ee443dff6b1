// A long answer goes to the page in pieces, since reading one costs the page time: rows first, some at
// a time, then the answer without them.

import type { AnswerOn, Subject } from './question.ts';

type Rowed = Extract<AnswerOn<Subject>, { readonly rows: readonly unknown[] }>;

/** Rows with so many values together make a piece; a row is never divided [-]. */
const MOST_VALUES = 8000;

/**
 * Rows of an answer, some at a time; a single piece is none, and stays with the answer.
 *
 * @param answer - the answer
 * @returns consecutive rows
 */
export function rowPieces(answer: AnswerOn<Subject>): readonly (readonly unknown[])[] {
  if (!('rows' in answer)) return [];
  const pieces: unknown[][] = [];
  let room = 0;
  for (const row of answer.rows) {
    const size = valuesIn(row);
    if (size > room) {
      pieces.push([]);
      room = MOST_VALUES;
    }
    pieces.at(-1)?.push(row);
    room -= size;
  }
  return pieces.length > 1 ? pieces : [];
}

/**
 * An answer with other rows.
 *
 * @param answer - the answer
 * @param rows - instead of its own
 * @returns the answer; the very same where it has no rows
 */
export function withRows(answer: AnswerOn<Subject>, rows: readonly unknown[]): AnswerOn<Subject> {
  const isRowed = (one: AnswerOn<Subject>): one is Rowed => 'rows' in one;
  return isRowed(answer) ? ({ ...answer, rows } as Rowed) : answer;
}

function valuesIn(value: unknown): number {
  if (typeof value !== 'object' || value === null) return 1;
  return Object.values(value).reduce((sum: number, each) => sum + valuesIn(each), 1);
}
