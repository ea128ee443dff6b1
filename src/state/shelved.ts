// A shop on the shelf: one that can be opened, or a record that can't and is kept as it is.

import { openShopDocument } from '../shop/open-shop.ts';
import { isOldDocument } from '../shop/opening/is-old-document.ts';
import type { Problem } from '../shop/opening/problem.ts';
import type { Shop } from '../shop/schema/shop-schema.ts';
import { shopFile, type TextFile } from '../shop/shop-file.ts';
import type { ShopRecord, ShopVersion } from '../shop/store/shop-store.ts';

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
 * Whether writing the shop would lose what its record holds: the form of an older version.
 *
 * @param entry - a shop or an unreadable record
 * @returns whether its document was changed in opening, or could not be opened
 */
export function isMigrated(entry: Shelved): boolean {
  return entry.kind === 'unreadable' || isOldDocument(entry.record.document);
}

/**
 * The shop that was worked on last. A variant that was kept beside another and never opened since
 * counts only where there is nothing else.
 *
 * @param entries - of the shelf
 * @returns the shop, or undefined where there is none
 */
export function latestOf(
  entries: readonly Shelved[],
): Extract<Shelved, { kind: 'shop' }> | undefined {
  const shops = entries.filter((entry) => entry.kind === 'shop');
  const isFresh = ({ shop, record }: (typeof shops)[number]) =>
    shop.variantOf !== undefined && (record.revision ?? 0) <= 1;
  return shops.toSorted(
    (a, b) => Number(isFresh(a)) - Number(isFresh(b)) || b.record.written - a.record.written,
  )[0];
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

/**
 * The file that holds a version of a shop.
 *
 * @param version - set aside, readable or not
 * @returns name and text of the file, with the day in its name
 */
export function versionFile({ document, aside }: ShopVersion): TextFile {
  const name = shelvedName(shelved({ id: '', document, written: aside }));
  return shopFile(`${name} ${new Date(aside).toISOString().slice(0, 10)}`, document);
}
