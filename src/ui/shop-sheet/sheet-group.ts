// A group of rows in a table of the sheet. A short one stays on its page; a long one may go on.

/** As many rows stay together [-]. */
const TOGETHER = 6;

/**
 * How a group is kept together.
 *
 * @param rows - how many rows it has [-]
 * @returns its class
 */
export function keptTogether(rows: number): 'short' | 'long' {
  return rows <= TOGETHER ? 'short' : 'long';
}
