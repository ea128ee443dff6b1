// Gate sets name drops of this shop, each once.

import type { Shop } from '../schema/shop-schema.ts';
import { didYouMean } from './nearest.ts';
import { placeOf } from './place.ts';
import type { Problem } from './problem.ts';

/**
 * Drops that a gate set names although they don't exist, or names twice.
 *
 * @param shop - a shop whose parts have the right shape
 * @returns a problem for each
 */
export function checkGateSets(shop: Shop): Problem[] {
  const ids = shop.drops.map((drop) => drop.id);
  const known = new Set(ids);
  return shop.gateSets.flatMap((set, s) => {
    const seen = new Set<string>();
    return set.open.flatMap((id, i) => {
      const place = placeOf(['gateSets', s, 'open', i], shop);
      const again = seen.has(id);
      seen.add(id);
      if (!known.has(id)) {
        return [{ place, message: `names "${id}": no drop has that id${didYouMean(id, ids)}` }];
      }
      return again ? [{ place, message: `names "${id}" a second time; once is enough` }] : [];
    });
  });
}
