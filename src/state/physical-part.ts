// What of a shop bears on the air: names and notes left out, so that renaming a machine or writing a
// note solves nothing anew.

import type { Shop } from '../shop/schema/shop-schema.ts';

/** Keys that no figure depends on. */
const WORDS: ReadonlySet<string> = new Set(['name', 'note', 'source', 'price', '$schema']);

/**
 * The sections and drops of a shop as one text without the words in them. Two shops with the same
 * text have the same ducts.
 *
 * @param shop - the shop
 * @returns JSON text
 */
export function ductsText(shop: Pick<Shop, 'sections' | 'drops'>): string {
  return withoutWords({ sections: shop.sections, drops: shop.drops });
}

/**
 * The collector of a shop as one text without the words in it.
 *
 * @param shop - the shop
 * @returns JSON text
 */
export function collectorText(shop: Pick<Shop, 'collector'>): string {
  return withoutWords(shop.collector);
}

function withoutWords(value: unknown): string {
  return JSON.stringify(value, (key, held: unknown) => (WORDS.has(key) ? undefined : held));
}
