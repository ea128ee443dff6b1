// Where air enters: every section that no other empties into is fed by one drop, and no drop feeds
// any other section.

import type { Shop } from '../schema/shop-schema.ts';
import type { SectionTree } from '../section-tree.ts';
import { didYouMean } from './nearest.ts';
import { placeOf } from './place.ts';
import type { Problem } from './problem.ts';

/**
 * Sections without air, and drops that feed no section of their own.
 *
 * @param shop - a shop whose parts have the right shape
 * @param tree - its tree
 * @returns a problem for each
 */
export function checkEnds(shop: Shop, tree: SectionTree): Problem[] {
  return [...deadSections(shop, tree), ...misplacedDrops(shop, tree)];
}

function deadSections(shop: Shop, tree: SectionTree): Problem[] {
  return shop.sections.flatMap((_, i) => {
    const fed = (tree.inlets[i]?.length ?? 0) + (tree.drops[i]?.length ?? 0) > 0;
    if (fed) return [];
    const message =
      'has neither an inlet nor a drop: no air can enter it; add a drop that feeds it';
    return [{ place: placeOf(['sections', i], shop), message }];
  });
}

function misplacedDrops(shop: Shop, tree: SectionTree): Problem[] {
  return shop.drops.flatMap((drop, i) => {
    const place = placeOf(['drops', i, 'into'], shop);
    const section = tree.position.get(drop.into);
    if (section === undefined) {
      const hint = didYouMean(drop.into, [...tree.position.keys()]);
      return [{ place, message: `names "${drop.into}": no section has that id${hint}` }];
    }
    const [inlet] = tree.inlets[section] ?? [];
    if (inlet !== undefined) {
      const message =
        `names section "${drop.into}", which section "${shop.sections[inlet]?.id}" empties into; ` +
        'a drop needs a section of its own';
      return [{ place, message }];
    }
    const [first] = tree.drops[section] ?? [];
    if (first === undefined || first === i) return [];
    const message =
      `names section "${drop.into}", which drop "${shop.drops[first]?.id}" feeds already; ` +
      'give each drop a section of its own and join the two in a wye';
    return [{ place, message }];
  });
}
