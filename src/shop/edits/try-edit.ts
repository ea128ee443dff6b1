// An edit with numbers that somebody typed: made only if the document is in order afterwards.

import { openShopDocument } from '../open-shop.ts';
import type { Problem } from '../opening/problem.ts';
import type { Shop } from '../schema/shop-schema.ts';
import type { ShopEdit } from './change.ts';

/** How an edit ended. */
export type TriedEdit =
  | { readonly kind: 'edited'; readonly shop: Shop }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

/**
 * Makes an edit and checks the whole document after it.
 *
 * @param shop - a shop in order
 * @param edit - the edit
 * @returns the next shop, or what would be wrong with it and where
 */
export function tryEdit(shop: Shop, edit: ShopEdit): TriedEdit {
  const next = edit(shop);
  if (next === shop) return { kind: 'edited', shop };
  const opened = openShopDocument(next);
  return opened.kind === 'opened' ? { kind: 'edited', shop: next } : opened;
}
