// A duct layout as the solver sees it: a tree of sections in flat arrays, the root at the flange.
// Section 0 empties into the collector; the inlets of a section are neighbours and come after it,
// so a loop upwards through the indices walks with the root first, a loop downwards with it last.

import type { Air } from '../air/air.ts';
import type { FrictionLaw } from '../duct/friction-law.ts';
import { type Join, wyeTerms } from '../duct/wye.ts';
import { type FrictionTable, frictionTable } from './friction-table.ts';

/** One section as it comes from a document or a script. */
export interface SectionInput {
  /** Index of the section that it empties into; -1 for the one at the flange. */
  readonly into: number;
  /** Inside diameter [m]. */
  readonly diameter: number;
  /** Roughness of the wall [m]. */
  readonly roughness: number;
  /** What multiplies the friction factor: length over diameter and the like [-]. */
  readonly frictional: number;
  /** Sum of the loss coefficients on the section's own velocity pressure, the gate left out [-]. */
  readonly fixed: number;
  /** How it meets the other inlets of a wye; of no effect where it is the only inlet. */
  readonly join: Join;
}

export interface Network {
  /** How many sections there are. */
  readonly count: number;
  /** `order[i]` is the place that section i had in the input, shape (count). */
  readonly order: Int32Array;
  /** The section that section i empties into, -1 for section 0, shape (count). */
  readonly parent: Int32Array;
  /** First inlet of section i, shape (count). */
  readonly firstInlet: Int32Array;
  /** How many inlets section i has; 0 means that it is open to the room, shape (count). */
  readonly inletCount: Int32Array;
  /** Inside area [m²], shape (count). */
  readonly area: Float64Array;
  /** Velocity pressure = this × flow² [Pa·s²/m⁶], shape (count). */
  readonly dynamic: Float64Array;
  /** Reynolds number = this × flow [s/m³], shape (count). */
  readonly reynolds: Float64Array;
  /** What multiplies the friction factor [-], shape (count). */
  readonly frictional: Float64Array;
  /** Sum of the constant loss coefficients without the gate [-], shape (count). */
  readonly fixed: Float64Array;
  /** Wye terms on the section's own, the combined and every inlet's flow² [Pa·s²/m⁶], (count). */
  readonly own: Float64Array;
  readonly combined: Float64Array;
  readonly cross: Float64Array;
  /** Friction law, tabulated. */
  readonly friction: FrictionTable;
  readonly relativeRoughness: Float64Array;
  readonly air: Air;
}

/**
 * Lays sections out as a network.
 * @param sections - the sections, in any order; exactly one has `into` -1, and they form a tree
 * @param air - density and viscosity of the air
 * @param law - friction law
 * @returns the network
 * @throws RangeError when the sections are no single tree, with the place of the offender
 */
export function buildNetwork(
  sections: readonly SectionInput[],
  air: Air,
  law: FrictionLaw,
): Network {
  const order = rootFirst(sections);
  const count = order.length;
  const placeOf = new Int32Array(count);
  order.forEach((input, place) => {
    placeOf[input] = place;
  });
  const column = (value: (section: SectionInput) => number) =>
    Float64Array.from(order, (input) => value(sections[input]!));
  const diameter = column((section) => section.diameter);
  const area = diameter.map((d) => (Math.PI / 4) * d * d);
  const parent = Int32Array.from(order, (input) => {
    const into = sections[input]!.into;
    return into < 0 ? -1 : placeOf[into]!;
  });
  const inletCount = new Int32Array(count);
  const firstInlet = new Int32Array(count);
  for (let i = count - 1; i > 0; i--) {
    inletCount[parent[i]!]!++;
    firstInlet[parent[i]!] = i;
  }
  const relativeRoughness = column((section) => section.roughness / section.diameter);
  const network: Network = {
    count,
    order,
    parent,
    firstInlet,
    inletCount,
    area,
    dynamic: area.map((a) => air.density / (2 * a * a)),
    reynolds: diameter.map((d) => (4 * air.density) / (Math.PI * d * air.viscosity)),
    frictional: column((section) => section.frictional),
    fixed: column((section) => section.fixed),
    own: new Float64Array(count),
    combined: new Float64Array(count),
    cross: new Float64Array(count),
    friction: frictionTable(law, relativeRoughness),
    relativeRoughness,
    air,
  };
  for (let i = 1; i < count; i++) {
    const into = parent[i]!;
    if (inletCount[into]! < 2) continue;
    const terms = wyeTerms(sections[order[i]!]!.join, area[i]!, area[into]!, air.density);
    network.own[i] = terms.own;
    network.combined[i] = terms.combined;
    network.cross[i] = terms.cross;
  }
  return network;
}

/** Indices of the input, breadth first from the flange, so that the inlets of one are neighbours. */
function rootFirst(sections: readonly SectionInput[]): Int32Array {
  const inlets = sections.map((): number[] => []);
  const roots: number[] = [];
  sections.forEach((section, index) => {
    const home = section.into < 0 ? roots : inlets[section.into];
    if (!home)
      throw new RangeError(`section ${index} empties into ${section.into}: no such section`);
    home.push(index);
  });
  if (roots.length !== 1) throw new RangeError(`${roots.length} sections at the flange, not 1`);
  const order = [...roots];
  for (let i = 0; i < order.length; i++) order.push(...inlets[order[i]!]!);
  if (order.length !== sections.length) {
    const lost = sections.findIndex((_, index) => !order.includes(index));
    throw new RangeError(`section ${lost} never reaches the flange`);
  }
  return Int32Array.from(order);
}
