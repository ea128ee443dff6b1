// Where to hold the instrument: places on a diameter and lengths of straight pipe, with their sources.
// Sources: shared/test-guidance.json, where each row carries its own.

import guidance from '../../../shared/test-guidance.json' with { type: 'json' };
import { type Provenance, provenanceOf } from '../../duct/provenance.ts';
import type { TestSheet } from '../../shop/schema/test-schema.ts';

/** How a traverse is spread. */
export type Traverse = TestSheet['traverse'];

/** Places on one diameter, from wall to wall. */
export interface Places {
  /** Distance from the near wall over the diameter [-] */
  readonly positions: readonly number[];
  readonly source: Provenance;
}

/** Straight pipe around the place of reading, in inside diameters [-]. */
export interface StraightPipe {
  readonly before: number;
  readonly after: number;
  readonly source: Provenance;
}

/** Mean speed over the speed at the centre [-]. */
export interface CentreRange {
  readonly low: number;
  readonly usual: number;
  readonly high: number;
  readonly source: Provenance;
}

/**
 * The places on one diameter.
 *
 * @param traverse - the rule and the number of places
 * @returns the places; none where the table has no such row
 */
export function placesOf(traverse: Pick<Traverse, 'rule' | 'perDiameter'>): Places {
  const row = guidance.rows.find(
    (each) =>
      each.kind === 'places' &&
      each.rule === traverse.rule &&
      each.perDiameter === traverse.perDiameter,
  );
  if (row?.positions === undefined) throw new RangeError(`no places for ${traverse.rule}`);
  return { positions: row.positions, source: provenanceOf(row, guidance.sources) };
}

/**
 * Straight pipe before and after the place of reading.
 *
 * @param which - what is good, or the least that will do
 * @returns lengths in inside diameters [-]
 */
export function straightPipe(which: 'preferred' | 'least'): StraightPipe {
  const row = guidance.rows.find(({ id }) => id === which);
  if (row?.upstream === undefined) throw new RangeError(`no row ${which}`);
  return {
    before: row.upstream,
    after: row.downstream,
    source: provenanceOf(row, guidance.sources),
  };
}

/**
 * What the mean speed is of a reading at the centre.
 *
 * @returns the usual part and its range [-]
 */
export function centreRange(): CentreRange {
  const row = guidance.rows.find(({ id }) => id === 'centre');
  if (row?.usual === undefined) throw new RangeError('no row centre');
  const { low, usual, high } = row;
  return { low, usual, high, source: provenanceOf(row, guidance.sources) };
}
