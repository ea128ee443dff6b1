// The carrying range: its low end lies below its high end.

import type { Shop } from '../schema/shop-schema.ts';
import type { Problem } from './problem.ts';

/**
 * A carrying range that is upside down or empty.
 *
 * @param shop - a shop whose parts have the right shape
 * @returns one problem or none
 */
export function checkCarryingRange(shop: Shop): Problem[] {
  const { low, high } = shop.carryingRange;
  if (low < high) return [];
  const message = `is ${high}, no more than the low end ${low}; it must be above it`;
  return [{ place: 'carryingRange.high', message }];
}
