// Edits of what was entered for buying. What is emptied is taken out, and with the last of it the
// whole of it, so that a shop without prices says nothing of prices.

import type { Purchase } from '../schema/purchase-schema.ts';
import { type Changes, changed, type ShopEdit } from './change.ts';

/**
 * Sets the length in which a family of pipes is bought.
 *
 * @param family - a family of the catalogue, or of a pipe of the maker's own
 * @param length - 0.3 to 30, or undefined for the usual one [m]
 * @returns the edit
 */
export function setStockLength(family: string, length: number | undefined): ShopEdit {
  return onPurchase((purchase) => {
    const known = purchase.stockLengths ?? [];
    const at = known.findIndex((each) => each.family === family);
    if (known[at]?.length === length) return {};
    return {
      stockLengths: withEntry(known, at, length === undefined ? undefined : { family, length }),
    };
  });
}

/**
 * Sets the price of an item of the cut list.
 *
 * @param item - key of the item
 * @param price - of one, 0 or more, or undefined for none [of the currency]
 * @returns the edit
 */
export function setPrice(item: string, price: number | undefined): ShopEdit {
  return onPurchase((purchase) => {
    const known = purchase.prices ?? [];
    const at = known.findIndex((each) => each.item === item);
    if (known[at]?.price === price) return {};
    return { prices: withEntry(known, at, price === undefined ? undefined : { item, price }) };
  });
}

/**
 * Sets the currency of all prices; their numbers stay.
 *
 * @param currency - its ISO 4217 code, or undefined for none
 * @returns the edit
 */
export function setCurrency(currency: string | undefined): ShopEdit {
  return onPurchase(() => ({ currency }));
}

function onPurchase(change: (purchase: Purchase) => Changes<Purchase>): ShopEdit {
  return (shop) => {
    const before = shop.purchase ?? {};
    const after = changed(before, change(before));
    if (after === before) return shop;
    return changed(shop, { purchase: Object.keys(after).length === 0 ? undefined : after });
  };
}

/** The list with the entry at its place, or without it; undefined for a list of nothing. */
function withEntry<T>(
  list: readonly T[],
  at: number,
  entry: T | undefined,
): readonly T[] | undefined {
  if (at === -1) return entry === undefined ? list : [...list, entry];
  if (entry !== undefined) return list.with(at, entry);
  const rest = list.toSpliced(at, 1);
  return rest.length === 0 ? undefined : rest;
}
