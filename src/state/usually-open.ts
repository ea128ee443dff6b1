// Which gates stand open when a shop is opened, so that the first thing seen is a live point.

import type { Shop } from '../shop/schema/shop-schema.ts';

/**
 * The drops to open at first: those of the first gate set, or else the first drop alone.
 *
 * @param shop - the shop
 * @returns ids of drops
 */
export function usuallyOpen(shop: Pick<Shop, 'drops' | 'gateSets'>): readonly string[] {
  const set = shop.gateSets.find(({ open }) => open.length > 0);
  return set?.open ?? shop.drops.slice(0, 1).map(({ id }) => id);
}
