// An edit with numbers that somebody typed: made only if the document is in order afterwards.

import { checkShop, openShopDocument } from '../open-shop.ts';
import { firstProblems, type Problem } from '../opening/problem.ts';
import { type Shop, shopSchema } from '../schema/shop-schema.ts';
import type { ShopEdit } from './change.ts';
import { keepsShape } from './keeps-shape.ts';

/** How an edit ended. */
export type TriedEdit =
  | { readonly kind: 'edited'; readonly shop: Shop }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

/**
 * Makes an edit and checks the document after it: the shape of what was changed, and what all parts say
 * of one another.
 *
 * @param shop - a shop in order
 * @param edit - the edit
 * @returns the next shop, or what would be wrong with it and where
 */
export function tryEdit(shop: Shop, edit: ShopEdit): TriedEdit {
  const next = edit(shop);
  if (next === shop) return { kind: 'edited', shop };
  const problems = problemsAfter(shop, next);
  return problems.length > 0 ? { kind: 'refused', problems } : { kind: 'edited', shop: next };
}

function problemsAfter(before: Shop, next: Shop): readonly Problem[] {
  if (keepsShape(shopSchema, before, next)) return firstProblems(checkShop(next, before));
  const opened = openShopDocument(next);
  return opened.kind === 'opened' ? [] : opened.problems;
}
