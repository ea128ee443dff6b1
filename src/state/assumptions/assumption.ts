// One thing that the answer rests on, as it is shown: what, which figure, and where it comes from.

import type { Provenance, Status } from '../../duct/provenance.ts';

/** How sure a figure is; `entered` is the maker's own. */
export type Sureness = Status | 'entered';

export interface Assumption {
  readonly what: string;
  /** The figure with its unit, in the reader's units; empty where there is none. */
  readonly value: string;
  /** Author, title, edition and table; empty where the figure was entered. */
  readonly source: string;
  readonly sureness: Sureness;
}

/** Assumptions that belong together, under a heading. */
export interface AssumptionGroup {
  readonly heading: string;
  readonly rows: readonly Assumption[];
}

/**
 * A figure that the maker entered, or put in the place of a tabulated one.
 *
 * @param what - what it is
 * @param value - the figure as it is shown
 * @returns the assumption
 */
export function entered(what: string, value: string): Assumption {
  return { what, value, source: '', sureness: 'entered' };
}

/**
 * A figure with its source.
 *
 * @param what - what it is
 * @param value - the figure as it is shown
 * @param from - where it comes from
 * @returns the assumption
 */
export function sourced(what: string, value: string, from: Provenance): Assumption {
  return { what, value, source: from.citation, sureness: from.status };
}

/**
 * Each assumption once, in the order of the first.
 *
 * @param rows - assumptions, some of them perhaps alike
 * @returns those that differ in words or figure
 */
export function eachOnce(rows: readonly Assumption[]): readonly Assumption[] {
  const seen = new Map(rows.toReversed().map((row) => [`${row.what}\n${row.value}`, row]));
  return rows.filter((row) => seen.get(`${row.what}\n${row.value}`) === row);
}
