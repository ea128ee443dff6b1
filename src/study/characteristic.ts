// What a branch draws at every suction: a section with all that is upstream of it, for one setting of
// its gates, tabulated once. Inlets of a wye are tabulated over the head that they share there, so
// joining them is an addition, and a branch that no choice touches is never solved again.

import { tabulatedFactor } from '../solve/friction-table.ts';
import type { Network } from '../solve/network.ts';
import { GRID_POINTS, type HeadGrid, regrid } from './head-grid.ts';

const NO_INLETS = new Float64Array(0);
const POINTS = Float64Array.from({ length: GRID_POINTS }, (_, k) => k);

/** A branch over the head h = √(P + own·Q²) at the wye that it empties into [Pa^½]. */
export interface Characteristic {
  /** Flow at each grid point [m³/s], shape (GRID_POINTS). */
  readonly flow: Float64Array;
  /** Head that its own inlets share then, over the grid's step [-]; empty at an open end. */
  readonly inner: Float64Array;
}

/**
 * Whether the inlets of every wye share a head: not where fixed coefficients on the combined flow
 * differ from inlet to inlet.
 * @param network - the network
 * @returns true when its branches can be tabulated
 */
export function hasSharedHeads(network: Network): boolean {
  const { combined, parent, firstInlet } = network;
  return combined.every((value, i) => i === 0 || value === combined[firstInlet[parent[i]!]!]!);
}

/**
 * Tabulates a section that is open to the room.
 * @param network - the network
 * @param section - the section [-]
 * @param gate - loss coefficient of its gate [-]
 * @param grid - the grid of heads
 * @returns its characteristic, to rounding at every grid point
 */
export function openEnd(
  network: Network,
  section: number,
  gate: number,
  grid: HeadGrid,
): Characteristic {
  const flow = new Float64Array(GRID_POINTS);
  for (let k = 1; k < GRID_POINTS; k++) {
    const guess = k === 1 ? 1e-3 : (flow[k - 1]! * k) / (k - 1);
    flow[k] = flowAtHead(network, section, gate, k * grid.step, guess);
  }
  return { flow, inner: NO_INLETS };
}

/** A section with inlets over the head that they share, at each point of the grid. */
export interface BelowWye {
  /** Flow [m³/s], shape (GRID_POINTS). */
  readonly flow: Float64Array;
  /** Total suction at the section's downstream end, before a wye [Pa], shape (GRID_POINTS). */
  readonly suction: Float64Array;
}

/**
 * Room for what is below a wye.
 * @returns both arrays, filled with 0
 */
export function emptyBelowWye(): BelowWye {
  return { flow: new Float64Array(GRID_POINTS), suction: new Float64Array(GRID_POINTS) };
}

/**
 * Joins inlets and draws what they give through a section. No interpolation is involved.
 * @param network - the network
 * @param section - the section [-]
 * @param branches - characteristics by place in the network; those of its inlets are read
 * @param grid - the grid of heads
 * @param below - receives flow and suction at every head of the inlets
 */
export function joinInlets(
  network: Network,
  section: number,
  branches: readonly (Characteristic | undefined)[],
  grid: HeadGrid,
  below: BelowWye,
): void {
  const { cross, combined, firstInlet, endInlet } = network;
  const { flow, suction } = below;
  const first = firstInlet[section]!;
  const end = endInlet[section]!;
  flow.fill(0);
  suction.fill(0);
  for (let j = first; j < end; j++) {
    const inlet = branches[j]!.flow;
    const onCross = cross[j]!;
    for (let k = 0; k < GRID_POINTS; k++) {
      const q = inlet[k]!;
      flow[k]! += q;
      suction[k]! += onCross * q * q;
    }
  }
  const onCombined = combined[first]!;
  for (let k = 1; k < GRID_POINTS; k++) {
    const q = flow[k]!;
    suction[k]! += (k * grid.step) ** 2 + onCombined * q * q + lossAt(network, section, 0, q);
  }
}

/**
 * Carries what is below a wye to the head at the next one.
 * @param network - the network
 * @param section - the section below the wye [-]
 * @param below - what {@link joinInlets} gave for it
 * @param grid - the grid of heads
 * @returns its characteristic
 */
export function characteristicOf(
  network: Network,
  section: number,
  below: BelowWye,
  grid: HeadGrid,
): Characteristic {
  const own = network.own[section]!;
  const heads = new Float64Array(GRID_POINTS);
  for (let k = 1; k < GRID_POINTS; k++) {
    heads[k] = Math.sqrt(below.suction[k]! + own * below.flow[k]! ** 2) / grid.step;
  }
  const flow = new Float64Array(GRID_POINTS);
  const inner = new Float64Array(GRID_POINTS);
  regrid(heads, below.flow, flow);
  regrid(heads, POINTS, inner);
  return { flow, inner };
}

function lossAt(network: Network, section: number, gate: number, flow: number): number {
  const factor = tabulatedFactor(network.friction, section, network.reynolds[section]! * flow);
  const coefficient = network.fixed[section]! + gate + factor * network.frictional[section]!;
  return coefficient * network.dynamic[section]! * flow * flow;
}

/** Newton in the logarithm of the flow, where every loss is almost straight. */
function flowAtHead(
  network: Network,
  section: number,
  gate: number,
  head: number,
  guess: number,
): number {
  const own = network.own[section]!;
  const wanted = head * head;
  let flow = guess;
  for (let i = 0; i < 30; i++) {
    const nearby = flow * 1.001;
    const here = lossAt(network, section, gate, flow) + own * flow * flow;
    const there = lossAt(network, section, gate, nearby) + own * nearby * nearby;
    const change = (0.001 * (here - wanted)) / (there - here);
    flow *= Math.exp(Math.max(-2, Math.min(2, -change)));
    if (Math.abs(change) < 1e-9) break;
  }
  return flow;
}
