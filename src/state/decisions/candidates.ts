// The collectors that are set side by side: that of the shop, and the curves at hand.

import { candidateOf } from '../../shop/decisions/collectors.ts';
import type { Collector } from '../../shop/schema/collector-schema.ts';
import type { Curve } from '../../shop/schema/curve-schema.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';

/** One that may be chosen. */
export interface Candidate {
  /** Its name; names are told apart by it. */
  readonly name: string;
  readonly collector: Collector;
  readonly isToday: boolean;
}

/**
 * All that may be chosen. A curve under the name of the shop's own is that one, as it was first.
 *
 * @param shop - the shop
 * @param curves - curves at hand
 * @returns that of the shop, then the curves under names of their own
 */
export function candidatesFor(shop: Shop, curves: readonly Curve[]): readonly Candidate[] {
  const own = shop.collector;
  const others = curves.filter(
    ({ name }, i) =>
      name !== own.curve.name && curves.findIndex((each) => each.name === name) === i,
  );
  return [
    { name: own.curve.name, collector: own, isToday: true },
    ...others.map((curve) => ({
      name: curve.name,
      collector: candidateOf(shop, curve),
      isToday: false,
    })),
  ];
}
