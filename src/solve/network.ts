// A duct layout as the solver sees it: a tree of sections in flat arrays, the root at the flange.
// Section 0 empties into the collector; the inlets of a section are neighbours and come after it,
// so a loop up through the indices begins at the root and a loop down through them ends there.
// (A little over 200 lines: the arrays, and what fills them.)

import type { Air } from '../air/air.ts';
import type { FrictionLaw } from '../duct/friction-law.ts';
import { type Join, wyeTerms } from '../duct/wye.ts';
import { type Branches, branchesOf } from './branches.ts';
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

/** The tree in flat arrays, each of shape (count) and in the network's order. */
export interface Network {
  /** How many sections there are. */
  readonly count: number;
  /** `order[i]` is the place that section i had in the input. */
  readonly order: Int32Array;
  /** The section that section i empties into, -1 for section 0. */
  readonly parent: Int32Array;
  /** First inlet of section i. */
  readonly firstInlet: Int32Array;
  /** One after its last inlet; equal to the first where section i is open to the room. */
  readonly endInlet: Int32Array;
  /** 1 where all inlets of section i lose something that hangs on all their flows, else 0. */
  readonly isCoupled: Uint8Array;
  /** 1 where the combined flow costs one inlet of section i more than another, else 0. */
  readonly isUneven: Uint8Array;
  /** Velocity pressure = this × flow² [Pa·s²/m⁶]. */
  readonly dynamic: Float64Array;
  /** Reynolds number = this × flow [s/m³]. */
  readonly reynolds: Float64Array;
  /** What multiplies the friction factor [-]. */
  readonly frictional: Float64Array;
  /** Laminar friction loss = this × flow [Pa·s/m³]. */
  readonly laminar: Float64Array;
  /** Sum of the constant loss coefficients without the gate [-]. */
  readonly fixed: Float64Array;
  /** Wye terms on the squares of the inlet's own, the combined, every inlet's flow [Pa·s²/m⁶]. */
  readonly own: Float64Array;
  readonly combined: Float64Array;
  readonly cross: Float64Array;
  /** Of a section below a wye: the part of `combined` that all its inlets have [Pa·s²/m⁶]. */
  readonly shared: Float64Array;
  /** Of an inlet: what its `combined` has beyond that, 0 or more [Pa·s²/m⁶]. */
  readonly excess: Float64Array;
  /** Roughness over inside diameter [-]. */
  readonly relativeRoughness: Float64Array;
  /** Friction law, tabulated. */
  readonly friction: FrictionTable;
  readonly branches: Branches;
  readonly air: Air;
}

/**
 * Lays sections out as a network.
 * @param sections - the sections, in any order; exactly one has `into` -1, and they form a tree
 * @param air - density and viscosity of the air
 * @param law - friction law
 * @returns the network
 * @throws RangeError when the sections are no single tree, when a number is out of its range or when
 *   a wye has inlets of both kinds; with the place of the offender
 */
export function buildNetwork(
  sections: readonly SectionInput[],
  air: Air,
  law: FrictionLaw,
): Network {
  sections.forEach(checkNumbers);
  const order = rootFirst(sections);
  const count = order.length;
  const placeOf = new Int32Array(count);
  order.forEach((input, place) => {
    placeOf[input] = place;
  });
  const column = (value: (section: SectionInput) => number) =>
    Float64Array.from(order, (input) => value(sections[input]!));
  const parent = Int32Array.from(order, (input) => {
    const into = sections[input]!.into;
    return into < 0 ? -1 : placeOf[into]!;
  });
  const firstInlet = new Int32Array(count);
  const endInlet = new Int32Array(count);
  for (let i = count - 1; i > 0; i--) {
    firstInlet[parent[i]!] = i;
    endInlet[parent[i]!] ||= i + 1;
  }
  const dynamic = column(({ diameter }) => air.density / (2 * areaOf(diameter) ** 2));
  const reynolds = column(
    (section) => (4 * air.density) / (Math.PI * section.diameter * air.viscosity),
  );
  const frictional = column((section) => section.frictional);
  const fixed = column((section) => section.fixed);
  const relativeRoughness = column((section) => section.roughness / section.diameter);
  const network: Network = {
    count,
    order,
    parent,
    firstInlet,
    endInlet,
    isCoupled: new Uint8Array(count),
    isUneven: new Uint8Array(count),
    dynamic,
    reynolds,
    frictional,
    laminar: frictional.map((multiple, i) => (64 * multiple * dynamic[i]!) / reynolds[i]!),
    fixed,
    own: new Float64Array(count),
    combined: new Float64Array(count),
    cross: new Float64Array(count),
    shared: new Float64Array(count),
    excess: new Float64Array(count),
    relativeRoughness,
    friction: frictionTable(law, relativeRoughness),
    branches: branchesOf({ parent, firstInlet, endInlet, fixed, frictional, dynamic }),
    air,
  };
  for (let i = 0; i < count; i++) {
    const [first, end] = [firstInlet[i]!, endInlet[i]!];
    if (end - first < 2) continue;
    for (let inlet = first; inlet < end; inlet++) join(network, sections, inlet);
    share(network, i);
  }
  return network;
}

/** Parts the losses on the combined flow into what all inlets of a wye have and what one has more. */
function share(network: Network, outlet: number): void {
  const { firstInlet, endInlet, isCoupled, isUneven, combined, cross, shared, excess } = network;
  const [first, end] = [firstInlet[outlet]!, endInlet[outlet]!];
  const least = Math.min(...combined.subarray(first, end));
  shared[outlet] = least;
  for (let j = first; j < end; j++) {
    excess[j] = combined[j]! - least;
    if (excess[j] !== 0) isUneven[outlet] = 1;
    if (least !== 0 || cross[j] !== 0) isCoupled[outlet] = 1;
  }
}

/** Sets the wye terms of an inlet that is not alone. */
function join(network: Network, sections: readonly SectionInput[], inlet: number): void {
  const { order, air } = network;
  const section = sections[order[inlet]!]!;
  const outlet = sections[section.into]!;
  const first = sections[order[network.firstInlet[network.parent[inlet]!]!]!]!;
  if (section.join.kind !== first.join.kind) {
    throw new RangeError(
      `section ${order[inlet]} joins by ${section.join.kind}, its neighbour by ${first.join.kind}`,
    );
  }
  const areas = [areaOf(section.diameter), areaOf(outlet.diameter)] as const;
  const terms = wyeTerms(section.join, ...areas, air.density);
  network.own[inlet] = terms.own;
  network.combined[inlet] = terms.combined;
  network.cross[inlet] = terms.cross;
}

function checkNumbers(section: SectionInput, index: number): void {
  const { diameter, roughness, frictional, fixed } = section;
  if (!(diameter > 0)) throw new RangeError(`section ${index} has diameter ${diameter}`);
  for (const [name, value] of Object.entries({ roughness, frictional, fixed })) {
    if (!(value >= 0)) throw new RangeError(`section ${index} has ${name} ${value}`);
  }
}

function areaOf(diameter: number): number {
  return (Math.PI / 4) * diameter ** 2;
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
