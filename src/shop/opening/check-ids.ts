// Ids: each names one thing only, and none takes the word that means the collector.

import { COLLECTOR_ID } from '../schema/section-schema.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { placeOf } from './place.ts';
import type { Problem } from './problem.ts';

/**
 * Ids that stand twice or are reserved. Sections and drops share one set of ids.
 *
 * @param shop - a shop whose parts have the right shape
 * @returns a problem for each
 */
export function checkIds(shop: Shop): Problem[] {
  const parts = new Map<string, string>();
  const sets = new Map<string, string>();
  return [
    ...shop.sections.flatMap((part, i) => check(shop, part.id, ['sections', i, 'id'], parts)),
    ...shop.drops.flatMap((part, i) => check(shop, part.id, ['drops', i, 'id'], parts)),
    ...shop.gateSets.flatMap((part, i) => check(shop, part.id, ['gateSets', i, 'id'], sets)),
  ];
}

function check(
  shop: Shop,
  id: string,
  path: [string, number, 'id'],
  taken: Map<string, string>,
): Problem[] {
  const place = placeOf(path, shop);
  if (id === COLLECTOR_ID) {
    return [{ place, message: `is "${id}", which is kept for the collector; choose another id` }];
  }
  const first = taken.get(id);
  if (first === undefined) {
    taken.set(id, `${path[0]}[${path[1]}]`);
    return [];
  }
  return [{ place, message: `is "${id}", which ${first} has already; every id must be its own` }];
}
