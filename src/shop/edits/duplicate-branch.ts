// A second branch like one that is there, beside it.

import type { Drop } from '../schema/drop-schema.ts';
import type { Section } from '../schema/section-schema.ts';
import { AT_FLANGE, branchUpstream, sectionTree } from '../section-tree.ts';
import { type ShopEdit, changed } from './change.ts';
import { freshId } from './fresh-id.ts';
import { freshName } from './fresh-name.ts';
import { sectionWith } from './insert-section.ts';
import { nameAlong } from './name-drop.ts';
import { roomForInlet, tidyJoins } from './tidy-joins.ts';

/**
 * Copies a section with everything upstream of it and joins the copy where the original joins. Ids
 * and names of the copy are new; saved gate sets don't open it. Nothing happens to the section at
 * the collector, which has nothing to join.
 *
 * @param id - id of the section
 * @returns the edit
 */
export function duplicateBranch(id: string): ShopEdit {
  return (shop) => {
    const old = sectionWith(shop, id);
    const tree = sectionTree(shop);
    const root = shop.sections.indexOf(old);
    if (tree.into[root] === AT_FLANGE) return shop;
    const copied = branchUpstream(tree, root);
    const originals = copied.flatMap((at) => shop.sections[at] ?? []);
    const ids = freshIds(originals, shop.sections);
    const fed = shop.drops.filter((drop) => ids.has(drop.into));
    const dropIds = freshIds(fed, shop.drops);
    const dropNames = shop.drops.map(({ name }) => name);
    const drops = fed.map(
      (drop): Drop => ({
        ...drop,
        id: dropIds.get(drop.id) ?? drop.id,
        name: taking(dropNames, drop.name),
        into: ids.get(drop.into) ?? drop.into,
      }),
    );
    // What is named after a drop is named after the copy of that drop.
    const along = (name: string) =>
      fed.reduce((now, drop, i) => nameAlong(now, drop.name, drops[i]?.name ?? drop.name), name);
    const names = shop.sections.flatMap(({ name }) => name ?? []);
    const room = roomForInlet(shop.sections, old.into, old.join);
    const copies = originals.map((section): Section => {
      const name = section.name && taking(names, along(section.name));
      const copy = { ...section, id: ids.get(section.id) ?? section.id };
      return section === old
        ? changed({ ...copy, join: room.join }, { name })
        : changed({ ...copy, into: ids.get(section.into) ?? section.into }, { name });
    });
    return tidyJoins({
      ...shop,
      sections: [...room.sections, ...copies],
      drops: [...shop.drops, ...drops],
    });
  };
}

interface Identified {
  readonly id: string;
}

/** New ids by the old ones. */
function freshIds(
  parts: readonly Identified[],
  all: readonly Identified[],
): ReadonlyMap<string, string> {
  const taken = all.map(({ id }) => id);
  return new Map(
    parts.map(({ id }) => {
      const next = freshId(id, taken);
      taken.push(next);
      return [id, next];
    }),
  );
}

/** A free name, which is then taken. */
function taking(taken: string[], wish: string): string {
  const name = freshName(wish, taken);
  taken.push(name);
  return name;
}
