// The cut list as one table of figures, to be saved or copied.

import type { CutListView } from './cut-list-view.ts';

/**
 * The rows of the table.
 *
 * @param view - the cut list
 * @returns group, item, amount, price and cost of each item, the total last
 */
export function cutListRows(view: CutListView): string[][] {
  const rows = view.groups.flatMap(({ heading, rows: items }) =>
    items.map(({ what, amount, per, priceText, cost }) => [
      what,
      heading,
      amount,
      priceText === '' ? '' : `${priceText} ${per}`,
      cost,
    ]),
  );
  return view.total === undefined ? rows : [...rows, ['Total', '', '', '', view.total]];
}
