// Which columns of a pasted table are the flows and the pressures.

import type { PastedColumn, PastedTable } from './pasted-table.ts';
import { unitBehind } from './column-hint.ts';

/** Places of the two columns among those of the table. */
export interface ColumnPair {
  readonly flow: number;
  readonly pressure: number;
}

/** What became of the choice. */
export type ChosenColumns =
  | { readonly kind: 'chosen'; readonly pair: ColumnPair }
  /** Two bare columns: the first one may be the flows, or the other way round. */
  | { readonly kind: 'unlabelled'; readonly pair: ColumnPair }
  | { readonly kind: 'open'; readonly pairs: readonly ColumnPair[] }
  | { readonly kind: 'none' };

/** More would not be read. */
const MOST_PAIRS = 6;

/**
 * Chooses the columns by what heads them and by the units in their cells.
 *
 * @param table - the pasted table
 * @returns the pair, or the pairs to choose from
 */
export function chooseColumns({ columns }: PastedTable): ChosenColumns {
  const holds = columns.map(holdsOf);
  const places = (what: string | undefined) =>
    holds.flatMap((each, at) => (each === what ? [at] : []));
  const bare = places(undefined).filter((at) => !isCount(columns[at]!, columns.length));
  const flows = places('flow');
  const pressures = places('pressure');
  if (flows.length === 0 && pressures.length === 0) {
    const [first, second, ...more] = bare;
    if (first === undefined || second === undefined) return { kind: 'none' };
    if (more.length === 0) return { kind: 'unlabelled', pair: { flow: first, pressure: second } };
    return open([first], [second, ...more]);
  }
  return open(flows.length > 0 ? flows : bare, pressures.length > 0 ? pressures : bare);
}

function open(flows: readonly number[], pressures: readonly number[]): ChosenColumns {
  const pairs = flows.flatMap((flow) => pressures.map((pressure) => ({ flow, pressure })));
  const [only, ...others] = pairs;
  if (!only) return { kind: 'none' };
  if (others.length === 0) return { kind: 'chosen', pair: only };
  return { kind: 'open', pairs: pairs.slice(0, MOST_PAIRS) };
}

/** By the heading, else by the units that stand in the cells. */
function holdsOf({ hint, amounts }: PastedColumn): string | undefined {
  if (hint.holds) return hint.holds;
  for (const amount of amounts) {
    const unit = amount && amount.unit !== '' ? unitBehind(amount.unit) : undefined;
    if (unit)
      return unit.dimension === 'flow' || unit.dimension === 'pressure' ? unit.dimension : 'other';
  }
  return undefined;
}

/** Whether a first column only counts the lines: 1, 2, 3. Of two columns neither does. */
function isCount({ amounts }: PastedColumn, columns: number): boolean {
  return columns > 2 && amounts.every((amount, i) => amount?.value === i + 1);
}
