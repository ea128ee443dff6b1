// Order where it means something: pipes in a row, branches of one wye, and the list of drops.

import { sectionTree } from '../section-tree.ts';
import { inletsOf } from '../straight-run.ts';
import { changed, type ShopEdit } from './change.ts';
import { sectionWith } from './insert-section.ts';
import { tidyJoins } from './tidy-joins.ts';

/**
 * Changes places with the one pipe that empties into a section: what fed that pipe feeds the
 * section, and the pipe joins where the section joined. Nothing happens at a wye or a drop. Changes
 * of diameter between them go back to what is usual.
 *
 * @param id - id of the downstream of the two
 * @returns the edit
 */
export function swapWithUpstream(id: string): ShopEdit {
  return (shop) => {
    const lower = sectionWith(shop, id);
    const [upper, ...others] = shop.sections.filter((section) => section.into === id);
    if (upper === undefined || others.length > 0) return shop;
    const { into, join } = lower;
    const follow = <T extends { readonly into: string }>(part: T): T =>
      part.into === upper.id ? { ...part, into: id } : part;
    const sections = shop.sections.map((section) => {
      if (section === lower) {
        return changed(upper, { into, join, transition: undefined });
      }
      return section === upper
        ? changed(lower, { into: upper.id, join: undefined, transition: undefined })
        : follow(section);
    });
    return tidyJoins({ ...shop, sections, drops: shop.drops.map(follow) });
  };
}

/**
 * Changes the place of a branch among the branches of its wye, which is the order that they are
 * listed and drawn in. Nothing happens to a straight run, and at either end.
 *
 * @param id - id of the section that joins
 * @param step - places further in the order of the document, below 0 for earlier [-]
 * @returns the edit
 */
export function moveAmongBranches(id: string, step: number): ShopEdit {
  return (shop) => {
    const tree = sectionTree(shop);
    const at = shop.sections.indexOf(sectionWith(shop, id));
    const { branches } = inletsOf(shop.sections, tree, tree.into[at] ?? -1);
    const other = branches[branches.indexOf(at) + step];
    if (!branches.includes(at) || other === undefined) return shop;
    return { ...shop, sections: swapped(shop.sections, at, other) };
  };
}

/**
 * Changes the place of a drop in the list of drops. Nothing happens at either end.
 *
 * @param id - id of the drop
 * @param step - places further down, below 0 for up [-]
 * @returns the edit
 */
export function moveDropInList(id: string, step: number): ShopEdit {
  return (shop) => {
    const at = shop.drops.findIndex((drop) => drop.id === id);
    if (at === -1) throw new RangeError(`no drop has the id ${id}`);
    if (shop.drops[at + step] === undefined) return shop;
    return { ...shop, drops: swapped(shop.drops, at, at + step) };
  };
}

function swapped<T>(list: readonly T[], one: number, other: number): readonly T[] {
  const [first, second] = [list[one], list[other]];
  if (first === undefined || second === undefined || one === other) return list;
  return list.with(one, second).with(other, first);
}
