// Ids: each names one section, one drop or one gate set, and no section takes the word that means the
// collector. A section and a drop may share an id, since nothing that names one can mean the other.

import { COLLECTOR_ID } from '../collector-id.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { placeOf } from './place.ts';
import type { Problem } from './problem.ts';

/**
 * Ids that stand twice or are reserved.
 *
 * @param shop - a shop whose parts have the right shape
 * @returns a problem for each
 */
export function checkIds(shop: Shop): Problem[] {
  const reserved = shop.sections.flatMap(({ id }, i) => {
    if (id !== COLLECTOR_ID) return [];
    const message = `is "${id}", which is kept for the collector; choose another id`;
    return [{ place: placeOf(['sections', i, 'id'], shop), message }];
  });
  const twice = (['sections', 'drops', 'gateSets'] as const).flatMap((list) =>
    idsTwice(shop, list),
  );
  return [...reserved, ...twice];
}

function idsTwice(shop: Shop, list: 'sections' | 'drops' | 'gateSets'): Problem[] {
  const first = new Map<string, number>();
  return shop[list].flatMap(({ id }, i) => {
    const bearer = first.get(id);
    if (bearer === undefined) {
      first.set(id, i);
      return [];
    }
    const message = `is "${id}", which ${list}[${bearer}] has already; every id must be its own`;
    return [{ place: placeOf([list, i, 'id'], shop), message }];
  });
}
