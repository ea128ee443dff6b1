// What each section and each wye loses at given flows, by the friction law itself, and how well a
// set of flows closes: mass at every wye, total pressure along every path from the room to the
// flange. Shares nothing with the way in which the flows were found.

import type { Network } from './network.ts';

/** Losses of total pressure at given flows [Pa], shape (sections) each. */
export interface Losses {
  /** From the upstream end of the section to its downstream end, gate and hood included. */
  readonly section: Float64Array;
  /** In the wye that it empties through; negative where the others pump it. */
  readonly join: Float64Array;
}

/**
 * Losses of every section.
 * @param network - the network
 * @param gate - loss coefficient of the gate in each section [-], shape (sections)
 * @param flow - flow in each section [m³/s], shape (sections)
 * @returns losses [Pa], each of shape (sections)
 */
export function lossesAt(network: Network, gate: Float64Array, flow: Float64Array): Losses {
  const { count, parent, firstInlet, endInlet, friction } = network;
  const section = new Float64Array(count);
  const join = new Float64Array(count);
  const square = (i: number) => flow[i]! * Math.abs(flow[i]!);
  for (let i = 0; i < count; i++) {
    const reynolds = network.reynolds[i]! * Math.abs(flow[i]!);
    const f = reynolds > 0 ? friction.law.factor(reynolds, network.relativeRoughness[i]!) : 0;
    const coefficient = network.fixed[i]! + gate[i]! + f * network.frictional[i]!;
    section[i] = coefficient * network.dynamic[i]! * square(i);
    const into = parent[i]!;
    if (into < 0) continue;
    let common = network.combined[i]! * square(into);
    for (let k = firstInlet[into]!; k < endInlet[into]!; k++) {
      common += network.cross[k]! * square(k);
    }
    join[i] = common + network.own[i]! * square(i);
  }
  return { section, join };
}

/** How far from closing a set of flows is. */
export interface Residual {
  /** The larger of the two, as a fraction [-]. */
  readonly worst: number;
  /** Section where it is, in the network's order. */
  readonly section: number;
  /** Largest gap in mass at the upstream end of a section, over its flow [-]. */
  readonly mass: number;
  /** Largest gap between the losses along a path and the suction, over the suction [-]. */
  readonly pressure: number;
}

/**
 * How well flows close.
 * @param network - the network
 * @param losses - what is lost at these flows [Pa]
 * @param flow - flow in each section [m³/s], shape (sections)
 * @param suction - total suction at the flange, above 0 [Pa]
 * @returns the gaps, as fractions [-]
 */
export function residualOf(
  network: Network,
  losses: Losses,
  flow: Float64Array,
  suction: number,
): Residual {
  let mass = 0;
  let pressure = 0;
  let worst = -1;
  let section = 0;
  const toFlange = new Float64Array(network.count);
  for (let i = 0; i < network.count; i++) {
    const into = network.parent[i]!;
    const beyond = into < 0 ? 0 : toFlange[into]!;
    toFlange[i] = beyond + losses.section[i]! + losses.join[i]!;
    const first = network.firstInlet[i]!;
    const end = network.endInlet[i]!;
    let gap = 0;
    if (first === end) {
      gap = Math.abs(toFlange[i]! - suction) / suction;
      pressure = Math.max(pressure, gap);
    } else {
      let sum = 0;
      for (let k = first; k < end; k++) sum += flow[k]!;
      gap = Math.abs(sum - flow[i]!) / Math.abs(flow[i]!);
      mass = Math.max(mass, gap);
    }
    if (gap <= worst) continue;
    worst = Number.isNaN(gap) ? Number.POSITIVE_INFINITY : gap;
    section = i;
  }
  return { worst, section, mass, pressure };
}
