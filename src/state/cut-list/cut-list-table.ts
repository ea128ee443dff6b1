// The cut list as one table of figures, to be saved or copied: sums as bare numbers, for a spreadsheet.

import type { CutListView } from './cut-list-view.ts';

/** What stands in the columns. */
export const CUT_LIST_COLUMNS = ['item', 'kind', 'how much', 'price', 'for', 'cost'] as const;

/**
 * The rows of the table.
 *
 * @param view - the cut list
 * @returns a cell for each column, one row for each item; the total last, where there is one
 */
export function cutListRows(view: CutListView): string[][] {
  const bare = (sum: number | undefined) => sum?.toFixed(2) ?? '';
  const rows = view.groups.flatMap(({ heading, rows: items }) =>
    items.map(({ what, amount, per, price, sum }) =>
      [what, heading, amount, bare(price), per, bare(sum)].map(plainSpaces),
    ),
  );
  if (view.total === undefined) return rows;
  return [...rows, ['Total', '', '', '', view.currency ?? '', bare(view.totalSum)]];
}

function plainSpaces(words: string): string {
  return words.replace(/[\u2009\u202f]/g, ' ');
}
