// The guideline flow of a kind of machine, for drops that name one and state no need of their own.
//
// 1. shared/machine-flows.json, where each row carries its own source.

import machines from '../../shared/machine-flows.json' with { type: 'json' };
import { type Provenance, provenanceOf } from '../duct/provenance.ts';
import type { Drop } from './schema/drop-schema.ts';

/** A machine of the guideline table. */
export interface MachineFlow {
  readonly id: string;
  readonly name: string;
  /** Least flow that catches the dust [m³/s] */
  readonly flow: number;
  /** Inside diameter of the port that goes with it [m] */
  readonly port: number;
  readonly source: Provenance;
}

/** Every machine of the table, in its order. */
export const MACHINES: readonly MachineFlow[] = machines.rows.map((row) => ({
  id: row.id,
  name: row.name,
  flow: row.flow,
  port: row.port,
  source: provenanceOf(row, machines.sources),
}));

/**
 * A machine of the guideline table.
 *
 * @param id - such as 'drum-sander'
 * @returns the machine, or undefined if the table does not have it
 */
export function findMachine(id: string): MachineFlow | undefined {
  return MACHINES.find((machine) => machine.id === id);
}

/**
 * The flow that a drop needs: its own figure, or else the guideline for its machine.
 *
 * @param drop - a drop of the shop
 * @returns least flow [m³/s], or undefined where nobody said
 */
export function flowNeeded(drop: Pick<Drop, 'need' | 'machine'>): number | undefined {
  if (drop.need !== undefined || drop.machine === undefined) return drop.need;
  return findMachine(drop.machine)?.flow;
}
