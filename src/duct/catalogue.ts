// The catalogue of pipes and hoses: true inside diameter and roughness of each size, with sources.
// Nominal is not inside: between two "4 in." plastic pipes lies 13 % of area.
//
// 1. shared/pipes.json and shared/roughness.json, where each row carries its own source.

import pipes from '../../shared/pipes.json' with { type: 'json' };
import roughnesses from '../../shared/roughness.json' with { type: 'json' };
import { type Provenance, provenanceOf, type Status } from './provenance.ts';

/** A kind of pipe, and the sizes that it comes in. */
export interface PipeFamily {
  readonly id: string;
  readonly name: string;
  readonly kind: 'pipe' | 'hose';
  /** A sentence on how its inside diameter is meant. */
  readonly note: string;
  readonly sizes: readonly PipeSize[];
}

/** One size of a family. */
export interface PipeSize {
  readonly id: string;
  /** As it is asked for in a shop. */
  readonly name: string;
  /** Inside diameter [m] */
  readonly diameter: number;
}

/** All that the ducts need to know of one pipe. */
export interface Pipe {
  readonly family: string;
  readonly size: string;
  /** Family and size in words. */
  readonly name: string;
  readonly kind: 'pipe' | 'hose';
  /** Inside diameter [m] */
  readonly diameter: number;
  /** Roughness of the wall to calculate with [m] */
  readonly roughness: number;
  /** Smoothest and roughest wall to expect [m] */
  readonly roughnessRange: readonly [low: number, high: number];
  readonly diameterSource: Provenance;
  readonly roughnessSource: Provenance;
  /** How sure the range of roughness is, which may be less than its value. */
  readonly roughnessRangeStatus: Status;
}

/** Every family, in the order of the table. */
export const PIPE_FAMILIES: readonly PipeFamily[] = pipes.families.map((family) => ({
  id: family.id,
  name: family.name,
  kind: family.kind as PipeFamily['kind'],
  note: family.note,
  sizes: pipes.rows
    .filter((row) => row.family === family.id)
    .map((row) => ({ id: row.size, name: row.name, diameter: row.diameter })),
}));

/**
 * A pipe of the catalogue.
 *
 * @param familyId - such as 'galvanised-spiral'
 * @param sizeId - such as '4in' or '100mm'
 * @returns the pipe, or undefined if the catalogue does not have it
 * @example
 * findPipe('pvc-schedule-40', '4in')?.diameter; // => 0.10226
 * findPipe('galvanised-spiral', '100mm')?.roughness; // => 9e-5
 * findPipe('galvanised-spiral', '101mm'); // => undefined
 */
export function findPipe(familyId: string, sizeId: string): Pipe | undefined {
  const family = pipes.families.find(({ id }) => id === familyId);
  const row = pipes.rows.find((each) => each.family === familyId && each.size === sizeId);
  if (family === undefined || row === undefined) return undefined;
  const wall = roughnesses.rows.find(({ id }) => id === family.roughness);
  if (wall === undefined) throw new RangeError(`no roughness "${family.roughness}" in the table`);
  return {
    family: family.id,
    size: row.size,
    name: `${family.name}, ${row.name}`,
    kind: family.kind as Pipe['kind'],
    diameter: row.diameter,
    roughness: wall.value,
    roughnessRange: [wall.low, wall.high],
    diameterSource: provenanceOf(row, pipes.sources),
    roughnessSource: provenanceOf(wall, roughnesses.sources),
    roughnessRangeStatus: wall.rangeStatus as Status,
  };
}
