// Who empties into whom: the sections of a shop by position, read from their `into`. Works on a shop
// that is not in order too, so that the checks can use it.

import { COLLECTOR_ID } from './collector-id.ts';
import type { Section } from './schema/section-schema.ts';
import type { Shop } from './schema/shop-schema.ts';

/** What a section's `into` names when it is the collector. */
export const AT_FLANGE = -1;
/** What a section's `into` names when nothing has that id. */
export const NOWHERE = -2;

/** Positions in `shop.sections` and `shop.drops`; each list has an entry for each section. */
export interface SectionTree {
  /** Position of the section with an id. */
  readonly position: ReadonlyMap<string, number>;
  /** Position of the section it empties into, or AT_FLANGE or NOWHERE. */
  readonly into: readonly number[];
  /** Positions of the sections that empty into it, in the order of the document. */
  readonly inlets: readonly (readonly number[])[];
  /** Positions of the drops that feed it; one at an open end of a shop in order, else none. */
  readonly drops: readonly (readonly number[])[];
}

/**
 * Reads the tree of a shop. Where an id stands twice, its first bearer counts.
 *
 * @param shop - sections and drops of a shop, in order or not
 * @returns positions of sections and drops
 */
export function sectionTree(shop: Pick<Shop, 'sections' | 'drops'>): SectionTree {
  const position = new Map<string, number>();
  shop.sections.forEach((section, i) => {
    if (!position.has(section.id)) position.set(section.id, i);
  });
  const placeOf = (section: Section) =>
    section.into === COLLECTOR_ID ? AT_FLANGE : (position.get(section.into) ?? NOWHERE);
  const into = shop.sections.map(placeOf);
  const inlets = shop.sections.map((): number[] => []);
  into.forEach((next, i) => {
    inlets[next]?.push(i);
  });
  const drops = shop.sections.map((): number[] => []);
  shop.drops.forEach((drop, i) => {
    const section = position.get(drop.into);
    if (section !== undefined) drops[section]?.push(i);
  });
  return { position, into, inlets, drops };
}

/**
 * The way of the air from a section to the collector.
 *
 * @param tree - a tree without cycles
 * @param start - position of the section where the air enters [-]
 * @returns positions of the sections it passes, that one first
 */
export function wayToCollector(tree: SectionTree, start: number): readonly number[] {
  const way: number[] = [];
  for (let at: number | undefined = start; at !== undefined && at >= 0; at = tree.into[at]) {
    way.push(at);
  }
  return way;
}

/**
 * A section with everything upstream of it.
 *
 * @param tree - a tree without cycles
 * @param root - position of the section [-]
 * @returns positions, that one first, each before what empties into it
 */
export function branchUpstream(tree: SectionTree, root: number): readonly number[] {
  const branch = [root];
  for (const at of branch) branch.push(...(tree.inlets[at] ?? []));
  return branch;
}
