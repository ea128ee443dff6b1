// How an edit changes a document: a copy with one part replaced, the rest shared with the old one.
// An edit that changes nothing gives back the very same document, so that it leaves no trace.

import type { Drop } from '../schema/drop-schema.ts';
import type { Section } from '../schema/section-schema.ts';
import type { Shop } from '../schema/shop-schema.ts';

/** From a document to the next. Pure; throws RangeError only if it names a part that is not there. */
export type ShopEdit = (shop: Shop) => Shop;

/** A copy with some keys set; a key that is given as undefined is taken out. */
export type Changes<T> = { readonly [Key in keyof T]?: T[Key] | undefined };

/**
 * A part of a document with changes; the very same part if nothing changes.
 *
 * @param part - a section, a drop or any other plain object
 * @param changes - keys to set, or undefined to take a key out
 * @returns the part as it is now
 */
export function changed<T extends object>(part: T, changes: Changes<T>): T {
  const keys = Object.keys(changes) as (keyof T)[];
  if (keys.every((key) => Object.is(part[key], changes[key]))) return part;
  const next = { ...part, ...changes };
  for (const key of keys) if (changes[key] === undefined) Reflect.deleteProperty(next, key);
  return next;
}

/**
 * An edit of one section.
 *
 * @param id - id of the section
 * @param change - from the section to the next
 * @returns the edit
 */
export function onSection(id: string, change: (section: Section) => Section): ShopEdit {
  return (shop) => withList(shop, 'sections', onOne(shop.sections, id, change));
}

/**
 * An edit of one drop.
 *
 * @param id - id of the drop
 * @param change - from the drop to the next
 * @returns the edit
 */
export function onDrop(id: string, change: (drop: Drop) => Drop): ShopEdit {
  return (shop) => withList(shop, 'drops', onOne(shop.drops, id, change));
}

function withList<Key extends 'sections' | 'drops'>(shop: Shop, key: Key, list: Shop[Key]): Shop {
  return list === shop[key] ? shop : { ...shop, [key]: list };
}

function onOne<T extends { readonly id: string }>(
  list: readonly T[],
  id: string,
  change: (part: T) => T,
): readonly T[] {
  const at = list.findIndex((part) => part.id === id);
  const part = list[at];
  if (part === undefined) throw new RangeError(`nothing there has the id ${id}`);
  const next = change(part);
  return next === part ? list : list.with(at, next);
}
