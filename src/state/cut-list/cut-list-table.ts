// The cut list and the cutting plans as tables of figures, to be saved or copied: sums as bare numbers,
// for a spreadsheet.

import type { CutPlan } from './cut-plan.ts';
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

/** What stands in the columns of the cutting plans. */
export const CUT_PLAN_COLUMNS = ['pipe', 'lengths', 'cut from each', 'left over'] as const;

/**
 * The rows of the cutting plans.
 *
 * @param plans - how each kind of pipe is cut
 * @returns a cell for each column, one row for all lengths that are cut alike
 */
export function cutPlanRows(plans: readonly CutPlan[]): string[][] {
  return plans.flatMap(({ heading, rows }) =>
    rows.map(({ times, cuts, left }) => {
      const pieces = cuts.map(({ length, section }) => `${length} ${section}`);
      return [heading, times, pieces.join(' + '), left].map(plainSpaces);
    }),
  );
}

function plainSpaces(words: string): string {
  return words.replace(/[\u2009\u202f]/g, ' ');
}
