// Every combination of shut and open gates of a layout, on any number of collectors: branches are
// tabulated once for each setting of their own gates, so that one state costs a few table readings.
// A pattern is a number: bit k is 1 where open end k is open, ends counted along the tree.
// (A little over 200 lines: the tables and what reads them share their layout in memory.)

import { type CollectorCurve, readAvailable } from '../curve/collector-curve.ts';
import type { Network } from '../solve/network.ts';
import {
  type BelowWye,
  type Characteristic,
  characteristicOf,
  emptyBelowWye,
  hasSharedHeads,
  joinInlets,
  openEnd,
} from './characteristic.ts';
import {
  GRID_POINTS,
  type GridReading,
  gridReading,
  type HeadGrid,
  moveReading,
  readTable,
} from './head-grid.ts';

/** Patterns are bits of a whole number. */
const MOST_ENDS = 30;
const MOST_STEPS = 30;
/** A change of the head by less than this part is the last; the error is of its square [-]. */
const LAST_CHANGE = 1e-4;

/** The two settings of every gate, in the network's order [-], shape (sections). */
export interface GateSettings {
  readonly shut: Float64Array;
  readonly open: Float64Array;
}

export interface PatternTables {
  readonly network: Network;
  readonly gates: GateSettings;
  readonly grid: HeadGrid;
  /** Open ends in the order of the bits, as places in the network. */
  readonly ends: readonly number[];
  /** First bit of the ends upstream of each section, and how many there are. */
  readonly firstBit: Int32Array;
  readonly bits: Int32Array;
  /** Characteristics of each section by the setting of its own ends, filled as they are met. */
  readonly known: readonly (Characteristic | undefined)[][];
  /** The characteristic of each section in the pattern at hand, and the bits it stands for. */
  readonly branches: (Characteristic | undefined)[];
  readonly ownBits: Int32Array;
  /** The whole layout in the pattern at hand: the system curve over the head of the last wye. */
  readonly system: BelowWye;
  readonly reading: GridReading;
  /** Collector's suction [Pa] and its slope [Pa·s/m³] at the flow at hand, shape (2). */
  readonly supply: Float64Array;
  /** Head of each section's inlets, over the grid's step [-], shape (sections). */
  readonly heads: Float64Array;
}

/**
 * Prepares the tables of a layout.
 * @param network - the network; {@link hasSharedHeads} must hold and it has 30 open ends at most
 * @param gates - loss coefficients of the gates when shut and when open
 * @param grid - grid of heads, up to the strongest collector's suction
 * @param earlier - tables of a layout of the same form, whose unchanged branches are taken over
 * @returns tables, empty but for what was taken over
 * @throws RangeError when the network has too many open ends or wyes without a shared head
 */
export function patternTables(
  network: Network,
  gates: GateSettings,
  grid: HeadGrid,
  earlier?: PatternTables,
): PatternTables {
  if (!hasSharedHeads(network)) throw new RangeError('a wye whose inlets share no head');
  const ends: number[] = [];
  const firstBit = new Int32Array(network.count);
  const bits = new Int32Array(network.count);
  const visit = (section: number): void => {
    const first = ends.length;
    firstBit[section] = first;
    const end = network.endInlet[section]!;
    for (let j = network.firstInlet[section]!; j < end; j++) visit(j);
    if (end === network.firstInlet[section]) ends.push(section);
    bits[section] = ends.length - first;
  };
  visit(0);
  if (ends.length > MOST_ENDS)
    throw new RangeError(`${ends.length} open ends, ${MOST_ENDS} at most`);
  const same = earlier ? unchanged(network, earlier.network) : [];
  return {
    network,
    gates,
    grid,
    ends,
    firstBit,
    bits,
    known: Array.from({ length: network.count }, (_, i) => (same[i] ? earlier!.known[i]! : [])),
    branches: Array.from({ length: network.count }),
    ownBits: new Int32Array(network.count).fill(-1),
    system: emptyBelowWye(),
    reading: gridReading(),
    supply: new Float64Array(2),
    heads: new Float64Array(network.count),
  };
}

/**
 * Takes up a pattern: finds or makes the characteristic of every branch, and the system curve.
 * @param tables - the tables; branches that are met for the first time are added
 * @param pattern - bit k is 1 where open end k is open [-]
 * @returns the system curve over the head of the last wye; valid until the next pattern
 */
export function takeUpPattern(tables: PatternTables, pattern: number): BelowWye {
  const { network, grid, firstBit, bits, ownBits, branches, known, system } = tables;
  for (let i = network.count - 1; i > 0; i--) {
    const own = (pattern >>> firstBit[i]!) & ((1 << bits[i]!) - 1);
    if (own === ownBits[i]) continue;
    ownBits[i] = own;
    branches[i] = known[i]![own] ??= branchOf(tables, i, own);
  }
  if (network.count > 1) {
    joinInlets(network, 0, branches, grid, system);
    return system;
  }
  system.flow.set(openEnd(network, 0, gateOf(tables, 0, pattern), grid).flow);
  for (let k = 0; k < GRID_POINTS; k++) system.suction[k] = (k * grid.step) ** 2;
  return system;
}

/**
 * The operating point of the pattern at hand on one collector.
 * @param tables - the tables
 * @param curve - the collector
 * @param guess - head of the last wye to begin from, over the grid's step [-]
 * @returns that head at the crossing, over the grid's step [-], or NaN where none was found from
 *   there; whether the crossing is the only one is for the caller to ask
 */
export function patternPoint(tables: PatternTables, curve: CollectorCurve, guess: number): number {
  const { system, reading, supply } = tables;
  const { weights, slopeWeights } = reading;
  let x = guess;
  for (let i = 0; i < MOST_STEPS; i++) {
    moveReading(reading, x);
    const flow = readTable(system.flow, reading, weights);
    readAvailable(curve, flow, supply);
    const gap = readTable(system.suction, reading, weights) - supply[0]!;
    const slope =
      readTable(system.suction, reading, slopeWeights) -
      supply[1]! * readTable(system.flow, reading, slopeWeights);
    if (!(slope > 0)) return Number.NaN;
    const change = gap / slope;
    x = Math.min(Math.max(x - change, x / 4), GRID_POINTS);
    if (Math.abs(change) < LAST_CHANGE * x) return x < GRID_POINTS - 1 ? x : Number.NaN;
  }
  return Number.NaN;
}

/**
 * Flow of every section at an operating point of the pattern at hand.
 * @param tables - the tables
 * @param head - what {@link patternPoint} returned [-]
 * @param flows - receives the flows in the network's order [m³/s], shape (sections)
 */
export function patternFlows(tables: PatternTables, head: number, flows: Float64Array): void {
  const { network, branches, heads, reading, system } = tables;
  const { firstInlet, endInlet, count } = network;
  const { weights } = reading;
  heads[0] = head;
  for (let i = 0; i < count; i++) {
    const first = firstInlet[i]!;
    const end = endInlet[i]!;
    if (i > 0 && first === end) continue;
    moveReading(reading, heads[i]!);
    if (i === 0) flows[0] = readTable(system.flow, reading, weights);
    for (let j = first; j < end; j++) {
      const { flow, inner } = branches[j]!;
      flows[j] = readTable(flow, reading, weights);
      if (inner.length > 0) heads[j] = readTable(inner, reading, weights);
    }
  }
}

/** Makes the characteristic of a section; those of its inlets are there already. */
function branchOf(tables: PatternTables, section: number, own: number): Characteristic {
  const { network, grid, branches } = tables;
  if (network.endInlet[section] === network.firstInlet[section]) {
    return openEnd(network, section, gateOf(tables, section, own), grid);
  }
  const below = emptyBelowWye();
  joinInlets(network, section, branches, grid, below);
  return characteristicOf(network, section, below, grid);
}

function gateOf(tables: PatternTables, section: number, own: number): number {
  return (own & 1 ? tables.gates.open : tables.gates.shut)[section]!;
}

/** Which sections are the same as in another network of the same form, and all upstream of them. */
function unchanged(network: Network, other: Network): boolean[] {
  const columns = [
    'dynamic',
    'reynolds',
    'frictional',
    'fixed',
    'own',
    'combined',
    'cross',
  ] as const;
  const same = Array.from({ length: network.count }, (_, i) =>
    columns.every((column) => network[column][i] === other[column][i]),
  );
  for (let i = network.count - 1; i > 0; i--) {
    if (!same[i] || network.parent[i] !== other.parent[i]) same[network.parent[i]!] = false;
  }
  return same;
}
