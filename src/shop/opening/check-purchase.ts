// What was entered for buying: each family of pipes and each item once, and families that there are.

import { PIPE_FAMILIES } from '../../duct/catalogue.ts';
import { OWN_FAMILY } from '../cut-list/stock-pipe.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { didYouMean } from './nearest.ts';
import { placeOf, showValue } from './place.ts';
import type { Problem } from './problem.ts';

/**
 * Families that no table has, and what stands twice.
 *
 * @param shop - a shop whose parts have the right shape
 * @returns a problem for each
 */
export function checkPurchase(shop: Shop): Problem[] {
  const { stockLengths = [], prices = [] } = shop.purchase ?? {};
  const families = stockLengths.map(({ family }) => family);
  const items = prices.map(({ item }) => item);
  const strays = families.flatMap((family, i): Problem[] => {
    const ids = PIPE_FAMILIES.map(({ id }) => id);
    if (ids.includes(family) || family.startsWith(`${OWN_FAMILY}-`)) return [];
    const place = placeOf(['purchase', 'stockLengths', i, 'family'], shop);
    return [
      {
        place,
        message: `is "${family}", a family of pipes not in the table${didYouMean(family, ids)}`,
      },
    ];
  });
  return [
    ...strays,
    ...twice(shop, 'stockLengths', 'family', families),
    ...twice(shop, 'prices', 'item', items),
  ];
}

function twice(shop: Shop, list: string, key: string, names: readonly string[]): Problem[] {
  const seen = new Set<string>();
  return names.flatMap((name, i) => {
    const again = seen.has(name);
    seen.add(name);
    if (!again) return [];
    const place = placeOf(['purchase', list, i, key], shop);
    return [{ place, message: `is ${showValue(name)} a second time; once is enough` }];
  });
}
