// Rows of a table of answers, and how they are sorted.

import type { Verdict } from '../../shop/verdict.ts';

export interface AnswerColumn {
  readonly name: string;
  /** Left out where the cells are words. */
  readonly unit?: string;
  /** Columns of one group that follow one another stand under its heading. */
  readonly group?: string;
}

/** A cell of words or figures; what it is sorted by where that isn't its text. */
export interface AnswerCell {
  readonly text: string;
  readonly by?: number;
  /** The shape that stands before the text. */
  readonly verdict?: Verdict;
}

export interface AnswerRow {
  readonly key: string;
  /** The first cell names the row. */
  readonly cells: readonly (string | AnswerCell)[];
  /** A word beside the name, such as "today". */
  readonly mark?: string;
  /** What the row is called where it is taken over; left out: it can't be. */
  readonly take?: string;
}

/** A row below all others, however these are sorted; its cells stand below one column or several. */
export interface FootRow {
  readonly name: string;
  readonly cells: readonly { readonly text: string; readonly span: number }[];
}

/** By which column rows are sorted, counted from 0, and in which direction. */
export interface SortOrder {
  readonly column: number;
  readonly direction: 'ascending' | 'descending';
}

/**
 * The text of a cell.
 *
 * @param cell - a cell
 * @returns its text
 */
export function cellText(cell: string | AnswerCell | undefined): string {
  return typeof cell === 'object' ? cell.text : (cell ?? '');
}

/**
 * Rows in order. Rows that are alike stay in the order that they came in; those without a figure in
 * a column of figures stand last in either direction.
 *
 * @param rows - in the order that they came in
 * @param order - how to sort them; left out: not at all
 * @returns the same rows
 */
export function sortedRows(
  rows: readonly AnswerRow[],
  order: SortOrder | undefined,
): readonly AnswerRow[] {
  if (order === undefined) return rows;
  const { column, direction } = order;
  const turn = direction === 'ascending' ? 1 : -1;
  const figure = ({ cells }: AnswerRow) => {
    const cell = cells[column];
    return typeof cell === 'object' ? cell.by : undefined;
  };
  return rows.toSorted((a, b) => {
    const [one, other] = [figure(a), figure(b)];
    if (one !== undefined && other !== undefined) return turn * (one - other);
    if (one !== undefined || other !== undefined) return one === undefined ? 1 : -1;
    return turn * cellText(a.cells[column]).localeCompare(cellText(b.cells[column]));
  });
}
