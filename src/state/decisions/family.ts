// The shops that belong together: one, and the variants that were kept beside it.

import type { Shop } from '../../shop/schema/shop-schema.ts';
import type { Shelved } from '../shelved.ts';

/** A shop of a family. */
export interface ShopVariant {
  readonly id: string;
  readonly shop: Shop;
  readonly isOpen: boolean;
  /** The first of the family, from which the others came. */
  readonly isFirst: boolean;
}

/**
 * The family of the open shop: the first one, then its variants, those kept first before the others.
 *
 * @param entries - of the shelf, new ones first
 * @param open - id and document of the open shop
 * @returns at least the open one
 */
export function familyOf(
  entries: readonly Shelved[],
  open: { readonly id: string; readonly shop: Shop },
): readonly ShopVariant[] {
  const shops = new Map<string, Shop>();
  for (const entry of entries.toReversed()) {
    if (entry.kind === 'shop') shops.set(entry.record.id, entry.shop);
  }
  shops.set(open.id, open.shop);
  const first = firstOf(shops, open.id);
  const members = [...shops].filter(([id]) => firstOf(shops, id) === first);
  return members
    .map(([id, shop]) => ({ id, shop, isOpen: id === open.id, isFirst: id === first }))
    .toSorted((a, b) => Number(b.isFirst) - Number(a.isFirst));
}

/** The shop that one came from in the end, as far as it is still there. */
function firstOf(shops: ReadonlyMap<string, Shop>, id: string): string {
  const seen = new Set<string>();
  let at = id;
  for (;;) {
    const of = shops.get(at)?.variantOf?.shop;
    if (of === undefined || seen.has(of)) return at;
    seen.add(at);
    at = of;
    if (!shops.has(at)) return at;
  }
}
