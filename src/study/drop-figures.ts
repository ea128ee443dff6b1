// What is asked of a drop at a set of flows: its own flow and speed, and the slowest place on its way.

import type { Network } from '../solve/network.ts';

/** A drop by places in the network's order. */
export interface DropWay {
  /** The sections that its air passes, its own first [-]. */
  readonly way: Int32Array;
}

/** A drop at a set of flows. */
export interface DropFigures {
  /** Flow into it [m³/s]. */
  flow: number;
  /** Mean speed in its own section [m/s]. */
  velocity: number;
  /** Lowest speed on its way [m/s], and the place of that section [-]. */
  slowest: number;
  section: number;
}

/**
 * Inside areas of a network's sections.
 * @param network - the network
 * @returns areas in its order [m²], shape (sections)
 */
export function areasOf(network: Network): Float64Array {
  return network.dynamic.map((dynamic) => Math.sqrt(network.air.density / (2 * dynamic)));
}

/**
 * Figures to be filled.
 * @returns figures, all 0
 */
export function emptyFigures(): DropFigures {
  return { flow: 0, velocity: 0, slowest: 0, section: 0 };
}

/**
 * Reads a drop's figures from the flows.
 * @param drop - the drop
 * @param flow - flow in each section in the network's order [m³/s], shape (sections)
 * @param area - area of each section in the network's order [m²], shape (sections)
 * @param figures - receives flow [m³/s], speeds [m/s] and the place [-]
 */
export function readFigures(
  drop: DropWay,
  flow: Float64Array,
  area: Float64Array,
  figures: DropFigures,
): void {
  const { way } = drop;
  let section = way[0]!;
  let slowest = flow[section]! / area[section]!;
  figures.flow = flow[section]!;
  figures.velocity = slowest;
  for (let k = 1; k < way.length; k++) {
    const at = way[k]!;
    const velocity = flow[at]! / area[at]!;
    if (velocity < slowest) {
      slowest = velocity;
      section = at;
    }
  }
  figures.slowest = slowest;
  figures.section = section;
}
