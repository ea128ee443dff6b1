// Which sections count as the main: a suggestion, and what stands in it.

import { PIPE_FAMILIES } from '../../duct/catalogue.ts';
import type { Pipe } from '../schema/section-schema.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { branchUpstream, type SectionTree, sectionTree } from '../section-tree.ts';
import { inletsOf } from '../straight-run.ts';

/** The family of a main of which nothing in the catalogue is told. */
const USUAL_FAMILY = 'galvanised-spiral';

/**
 * The trunk: the sections from the flange up to the last wye. At each wye it goes straight on, and
 * where nothing goes straight, or what goes straight has no wye any more while another has, to the
 * inlet with the most drops.
 *
 * @param shop - a shop in order
 * @returns ids of the sections, that at the flange first; none where there is no wye
 */
export function suggestedMain(shop: Pick<Shop, 'sections' | 'drops'>): readonly string[] {
  const tree = sectionTree(shop);
  const drops = shop.sections.map((_, at) => dropsBeyond(tree, at));
  const main: string[] = [];
  let at = tree.into.indexOf(-1);
  while (at >= 0 && drops[at]! > 1) {
    main.push(shop.sections[at]!.id);
    const { straight } = inletsOf(shop.sections, tree, at);
    const fullest = tree.inlets[at]!.toSorted((a, b) => drops[b]! - drops[a]!)[0] ?? -1;
    at = straight !== undefined && drops[straight]! > 1 ? straight : fullest;
  }
  return main;
}

/**
 * Sections that more than one drop's air passes: the trunk and the mains of its arms.
 *
 * @param shop - a shop in order
 * @returns their ids, in the order of the document
 */
export function sharedSections(shop: Pick<Shop, 'sections' | 'drops'>): readonly string[] {
  const tree = sectionTree(shop);
  return shop.sections.filter((_, at) => dropsBeyond(tree, at) > 1).map(({ id }) => id);
}

function dropsBeyond(tree: SectionTree, at: number): number {
  return branchUpstream(tree, at).reduce((sum, each) => sum + tree.drops[each]!.length, 0);
}

/**
 * The family of pipe that a main is made of.
 *
 * @param shop - a shop in order
 * @param sections - ids of the sections that count as the main
 * @returns id of the family of the first of them that is of the catalogue, else galvanised spiral
 */
export function mainFamily(shop: Pick<Shop, 'sections'>, sections: readonly string[]): string {
  for (const id of sections) {
    const pipe = shop.sections.find((section) => section.id === id)?.pipe;
    if (pipe?.kind === 'catalogue') return pipe.family;
  }
  return PIPE_FAMILIES.find(({ id }) => id === USUAL_FAMILY)?.id ?? USUAL_FAMILY;
}

/**
 * A pipe of another size in place of one that is there. A roughness of its own goes with the pipe
 * where the family stays the same.
 *
 * @param old - the pipe that is there
 * @param family - a family of the catalogue
 * @param size - a size of it
 * @returns the pipe
 */
export function resized(old: Pipe, family: string, size: string): Pipe {
  const pipe = { kind: 'catalogue', family, size } as const;
  if (old.kind !== 'catalogue' || old.family !== family || old.roughness === undefined) return pipe;
  return { ...pipe, roughness: old.roughness };
}
