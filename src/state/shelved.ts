// A shop on the shelf: one that can be opened, or a record that can't and is kept as it is.

import { openShopDocument } from '../shop/open-shop.ts';
import type { Problem } from '../shop/opening/problem.ts';
import type { Shop } from '../shop/schema/shop-schema.ts';
import type { ShopRecord } from '../shop/store/shop-store.ts';

/** A record with what came of opening it. */
export type Shelved =
  | { readonly kind: 'shop'; readonly record: ShopRecord; readonly shop: Shop }
  | {
      readonly kind: 'unreadable';
      readonly record: ShopRecord;
      readonly problems: readonly Problem[];
    };

/**
 * Opens a record.
 *
 * @param record - as it was kept
 * @returns the shop, or the record with what is wrong with it
 */
export function shelved(record: ShopRecord): Shelved {
  const opened = openShopDocument(record.document);
  return opened.kind === 'opened'
    ? { kind: 'shop', record, shop: opened.shop }
    : { kind: 'unreadable', record, problems: opened.problems };
}

/**
 * What a record is called in a list.
 *
 * @param entry - a shop or an unreadable record
 * @returns the shop's name, or what the record says of one
 */
export function shelvedName(entry: Shelved): string {
  if (entry.kind === 'shop') return entry.shop.name;
  const { document } = entry.record;
  const name = typeof document === 'object' && document !== null && Reflect.get(document, 'name');
  return typeof name === 'string' && name !== '' ? name : 'a shop without a name';
}
