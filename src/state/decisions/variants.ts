// Variants: shops kept beside another to be compared with it, each remembering which shop and what is
// other in it.

import { changed } from '../../shop/edits/change.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';

/** As long as a name may be. */
const LONGEST = 200;

/**
 * A name for a variant.
 *
 * @param name - of the shop that it is kept beside
 * @param words - what is other in it
 * @returns both, as far as a name may be long
 */
export function variantName(name: string, words: string): string {
  return `${name}: ${words}`.slice(0, LONGEST - 10);
}

/**
 * A shop as a variant of another.
 *
 * @param shop - the variant as it is built
 * @param of - id and name of the other
 * @param name - of the variant
 * @param words - what is other in it
 * @returns the document to be kept
 */
export function asVariant(
  shop: Shop,
  of: { readonly id: string; readonly name: string },
  name: string,
  words: string,
): Shop {
  const short = words.slice(0, LONGEST);
  return changed(shop, { name, variantOf: { shop: of.id, name: of.name, words: short } });
}

/**
 * A variant taken over into the shop that it was kept beside.
 *
 * @param of - that shop as it is now
 * @param variant - the variant
 * @returns the variant's document under the name and the origin of the shop
 */
export function variantTaken(of: Shop, variant: Shop): Shop {
  return changed(variant, { name: of.name, note: of.note, variantOf: of.variantOf });
}
