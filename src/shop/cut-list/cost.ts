// What the items of a cut list cost, as far as their prices were entered.

import type { Purchase } from '../schema/purchase-schema.ts';
import type { CutList } from './cut-list.ts';

/** What an item costs. */
export interface ItemCost {
  /** Of one: a length of stock, a metre of hose, a piece [of the currency] */
  readonly price: number;
  /** Of all of it [of the currency] */
  readonly cost: number;
}

/** What a cut list costs. */
export interface Cost {
  /** By key; items without a price are not in it. */
  readonly items: ReadonlyMap<string, ItemCost>;
  /** Of all items that have a price [of the currency] */
  readonly total: number;
  /** How many items have no price [-] */
  readonly unpriced: number;
}

/**
 * What a cut list costs.
 *
 * @param list - the cut list
 * @param purchase - the prices that were entered
 * @returns price and cost of each item, and the total of those that have a price
 */
export function costOf(list: CutList, purchase: Purchase | undefined): Cost {
  const prices = new Map((purchase?.prices ?? []).map(({ item, price }) => [item, price]));
  const lines = Object.values(list).flat();
  const items = new Map<string, ItemCost>();
  for (const { key, amount } of lines) {
    const price = prices.get(key);
    if (price !== undefined) items.set(key, { price, cost: price * amount });
  }
  const total = [...items.values()].reduce((sum, { cost }) => sum + cost, 0);
  return { items, total, unpriced: lines.length - items.size };
}
