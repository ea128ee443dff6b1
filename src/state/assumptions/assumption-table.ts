// What was assumed as one table, to be saved or copied.

import type { AssumptionGroup } from './assumption.ts';

/** What stands in the columns. */
export const ASSUMPTION_COLUMNS = ['what', 'about', 'figure', 'source', 'how sure'] as const;

/**
 * The rows of the table.
 *
 * @param groups - assumptions by what they are about
 * @returns a cell for each column, one row for each assumption
 */
export function assumptionRows(groups: readonly AssumptionGroup[]): string[][] {
  return groups.flatMap(({ heading, rows }) =>
    rows.map(({ what, value, source, sureness }) => [
      what,
      heading,
      value.replace(/[\u2009\u202f]/g, ' '),
      source,
      sureness === 'entered' ? 'entered for this shop' : sureness,
    ]),
  );
}
