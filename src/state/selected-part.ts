// Which part of a shop is looked at: the same one in the list, in the drawing and in every plot.

import type { Shop } from '../shop/schema/shop-schema.ts';

/** A section or a drop, by its id. */
export interface Part {
  readonly kind: 'section' | 'drop';
  readonly id: string;
}

/**
 * Whether a shop has a part.
 *
 * @param shop - the shop
 * @param part - the part in question
 * @returns true if a section or drop of that id is there
 */
export function hasPart(shop: Pick<Shop, 'sections' | 'drops'>, part: Part): boolean {
  const list: readonly { readonly id: string }[] =
    part.kind === 'section' ? shop.sections : shop.drops;
  return list.some(({ id }) => id === part.id);
}
