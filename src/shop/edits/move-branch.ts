// A branch taken off one wye and joined to another.

import type { Shop } from '../schema/shop-schema.ts';
import { branchUpstream, sectionTree } from '../section-tree.ts';
import { changed, type ShopEdit } from './change.ts';
import { sectionWith, splitSection } from './insert-section.ts';
import { roomForInlet, tidyJoins } from './tidy-joins.ts';

/**
 * Joins a section, with everything upstream of it, at the upstream end of another section, beside
 * what empties into that one. Nothing happens where that can't be: at the collector; where the
 * section's old place would be left without air; into its own branch; and where a drop feeds the
 * other section, which has to be joined in its length.
 *
 * @param id - id of the section
 * @param into - id of the section to join
 * @returns the edit
 */
export function moveBranch(id: string, into: string): ShopEdit {
  return (shop) => {
    const old = sectionWith(shop, id);
    sectionWith(shop, into);
    if (old.into === into || !canMove(shop, id, into)) return shop;
    if (!shop.sections.some((section) => section.into === into)) return shop;
    const room = roomForInlet(shop.sections, into, old.join);
    const sections = room.sections.map((section) =>
      section.id === id ? changed(section, { into, join: room.join }) : section,
    );
    return tidyJoins({ ...shop, sections });
  };
}

/**
 * Joins a section, with everything upstream of it, in the length of another section, which is cut in
 * two there. Nothing happens where the branch can't be moved.
 *
 * @param id - id of the section
 * @param onto - id of the section to be cut; its downstream part keeps it
 * @param upstreamLength - length of the part upstream of the new wye [m]
 * @param upstreamId - id for that part
 * @returns the edit
 */
export function moveBranchOnto(
  id: string,
  onto: string,
  upstreamLength: number,
  upstreamId: string,
): ShopEdit {
  return (shop) => {
    if (!canMove(shop, id, onto)) return shop;
    return moveBranch(id, onto)(splitSection(onto, upstreamLength, upstreamId)(shop));
  };
}

/**
 * Whether a branch can be taken off its wye and led into a section: that section is not part of it,
 * and something else still feeds the old wye.
 *
 * @param shop - the shop
 * @param id - id of the section at the end of the branch
 * @param into - id of the section to be led into
 * @returns true if it can
 */
export function canMove(shop: Pick<Shop, 'sections' | 'drops'>, id: string, into: string): boolean {
  const tree = sectionTree(shop);
  const root = tree.position.get(id) ?? -1;
  const target = tree.position.get(into) ?? -1;
  const leaves = tree.inlets[tree.into[root] ?? -1] ?? [];
  return leaves.length > 1 && !branchUpstream(tree, root).includes(target);
}
