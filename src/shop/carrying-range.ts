// The tabulated ranges of speed that carry dust and chips, each with its source.
//
// 1. shared/carrying-ranges.json, where each row carries its own source.

import ranges from '../../shared/carrying-ranges.json' with { type: 'json' };
import { type Provenance, provenanceOf } from '../duct/provenance.ts';

/** One range of the table. */
export interface CarryingRange {
  readonly id: string;
  /** What is carried. */
  readonly name: string;
  /** Slower and it settles [m/s] */
  readonly low: number;
  /** Faster and the pipe throttles the collector [m/s] */
  readonly high: number;
  readonly source: Provenance;
}

/** Every range of the table; the first is the usual one. */
export const CARRYING_RANGES: readonly CarryingRange[] = ranges.rows.map((row) => ({
  id: row.id,
  name: row.name,
  low: row.low,
  high: row.high,
  source: provenanceOf(row, ranges.sources),
}));

/**
 * The speeds that carry wood dust and chips where nothing else is said.
 *
 * @returns low and high [m/s]
 */
export function usualCarryingRange(): { readonly low: number; readonly high: number } {
  const row = CARRYING_RANGES.find(({ id }) => id === 'default');
  if (row === undefined) throw new RangeError('the table has no default carrying range');
  return { low: row.low, high: row.high };
}
