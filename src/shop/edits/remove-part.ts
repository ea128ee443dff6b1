// Taking parts out of the tree. What is left is closed up, so that no wye has one inlet and no
// section is without air.

import { branchUpstream, sectionTree, wayToCollector } from '../section-tree.ts';
import type { ShopEdit } from './change.ts';
import { sectionWith } from './insert-section.ts';
import { tidyJoins } from './tidy-joins.ts';

/**
 * Takes a section out and lets what fed it feed what it emptied into. Nothing happens where that
 * can't be: at the collector if several sections would then empty into it, and at a drop's own section
 * if that joins a wye, since the drop would have none. Remove the drop there.
 *
 * @param id - id of the section
 * @returns the edit
 */
export function removeSection(id: string): ShopEdit {
  return (shop) => {
    const old = sectionWith(shop, id);
    const tree = sectionTree(shop);
    const at = shop.sections.indexOf(old);
    const into = tree.into[at] ?? -1;
    const inlets = tree.inlets[at] ?? [];
    if (into < 0 && inlets.length !== 1) return shop;
    if (inlets.length === 0 && (tree.inlets[into]?.length ?? 0) > 1) return shop;
    // A single pipe that comes up to a wye joins it as the old one did.
    const { join } = old;
    const takeOver = inlets.length === 1 && join !== undefined ? { join } : {};
    const sections = shop.sections
      .filter((each) => each !== old)
      .map((each) => (each.into === id ? { ...each, into: old.into, ...takeOver } : each));
    const drops = shop.drops.map((drop) => (drop.into === id ? { ...drop, into: old.into } : drop));
    return tidyJoins({ ...shop, sections, drops });
  };
}

/**
 * Takes a drop out with all the pipe that only its air used, and out of every gate set. Nothing
 * happens to the last drop of a shop.
 *
 * @param id - id of the drop
 * @returns the edit
 */
export function removeDrop(id: string): ShopEdit {
  return (shop) => {
    const old = shop.drops.find((drop) => drop.id === id);
    if (old === undefined) throw new RangeError(`no drop has the id ${id}`);
    return removeBranch(old.into)(shop);
  };
}

/**
 * Takes a section out with everything upstream of it, its drops out of every gate set, and with it
 * the pipe downstream that no other air uses. Nothing happens where no drop would be left.
 *
 * @param id - id of the section
 * @returns the edit
 */
export function removeBranch(id: string): ShopEdit {
  return (shop) => {
    const tree = sectionTree(shop);
    const way = wayToCollector(tree, shop.sections.indexOf(sectionWith(shop, id)));
    const root = way.find((at) => (tree.inlets[tree.into[at] ?? -1]?.length ?? 0) > 1);
    if (root === undefined) return shop;
    const gone = new Set(branchUpstream(tree, root).map((at) => shop.sections[at]?.id));
    const drops = shop.drops.filter((drop) => !gone.has(drop.into));
    const left = new Set(drops.map((drop) => drop.id));
    return tidyJoins({
      ...shop,
      sections: shop.sections.filter((section) => !gone.has(section.id)),
      drops,
      gateSets: shop.gateSets.map((set) =>
        set.open.every((each) => left.has(each))
          ? set
          : { ...set, open: set.open.filter((each) => left.has(each)) },
      ),
    });
  };
}
