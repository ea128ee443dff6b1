// A whole shop in the part of a link behind the #, which browsers send to no server.

import { type OpenedShop, openShopDocument } from '../open-shop.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { deflated, inflated } from './deflate.ts';
import { LinkFault } from './fault.ts';
import { packShop, unpackShop } from './pack-shop.ts';

/** Longest link that chats and mail programs leave whole (common practice, no source). */
export const LONGEST_LINK = 2000;

/** What the part behind the # begins with; the digit is the version of the packing. */
const START = '#shop=1.';
const ANY_START = /^#shop=(\w{1,8})\./;
/** Longest part behind the # that is read at all, in characters. */
const LONGEST_READ = 1_500_000;

/** How making a link ended. */
export type ShopLink =
  | { readonly kind: 'link'; readonly address: string; readonly leftOut: 'nothing' | 'notes' }
  | { readonly kind: 'too long'; readonly length: number }
  | { readonly kind: 'impossible' };

/**
 * The link that carries a shop.
 *
 * @param shop - the shop
 * @param page - address of the page, without anything behind a #
 * @returns the link, without notes if they make it too long; or that it is too long even so, or that
 *   it would not carry the shop unchanged
 */
export async function shopLink(shop: Shop, page: string): Promise<ShopLink> {
  const whole = await addressOf(shop, page);
  if (whole === undefined) return { kind: 'impossible' };
  if (whole.length <= LONGEST_LINK) return { kind: 'link', address: whole, leftOut: 'nothing' };
  const short = await addressOf(withoutNotes(shop), page);
  return short !== undefined && short.length <= LONGEST_LINK
    ? { kind: 'link', address: short, leftOut: 'notes' }
    : { kind: 'too long', length: whole.length };
}

/** The address, unless what it carries is not the same when it is opened. */
async function addressOf(shop: Shop, page: string): Promise<string | undefined> {
  const text = packShop(shop);
  const back = openUnpacked(text);
  const isSame = back.kind === 'opened' && sorted(back.shop) === sorted(shop);
  return isSame ? page + START + (await deflated(text)) : undefined;
}

function withoutNotes(shop: Shop): Shop {
  const bare = <T extends { readonly note?: string }>({ note: _note, ...rest }: T) => rest;
  const { curve } = shop.collector;
  return {
    ...bare(shop),
    collector: { ...shop.collector, curve: bare(curve) },
    sections: shop.sections.map(bare),
    drops: shop.drops.map(bare),
  };
}

/** Whether the part of an address behind the # is meant to carry a shop. */
export function isShopLink(hash: string): boolean {
  return ANY_START.test(hash);
}

/**
 * Opens the shop that a link carries.
 *
 * @param hash - the part of the address behind the #, the # included
 * @returns the shop, or what is wrong with the link
 */
export async function openShopLink(hash: string): Promise<OpenedShop> {
  const version = ANY_START.exec(hash)?.[1];
  if (version === undefined) return refused('is none that carries a shop');
  if (!hash.startsWith(START)) {
    return refused('was made by a newer version of this program, which packs shops differently');
  }
  if (hash.length > LONGEST_READ) return refused('is too long');
  try {
    return openUnpacked(await inflated(hash.slice(START.length)));
  } catch (error) {
    if (error instanceof LinkFault) return refused(`can’t be read: ${error.message}`);
    throw error;
  }
}

function openUnpacked(text: string): OpenedShop {
  try {
    return openShopDocument(unpackShop(text));
  } catch (error) {
    if (error instanceof LinkFault) return refused(`can’t be read: ${error.message}`);
    throw error;
  }
}

function refused(message: string): OpenedShop {
  return { kind: 'refused', problems: [{ place: 'the link', message }] };
}

/** Equal for documents that say the same, whatever the order of their keys. */
function sorted(value: unknown): string {
  return JSON.stringify(value, (_, part: unknown) =>
    typeof part === 'object' && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).toSorted(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );
}
