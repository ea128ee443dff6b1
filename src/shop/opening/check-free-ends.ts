// An open end needs some loss before its air meets other air, or any suction would draw air without
// end. Looked for once all else is in order, in the same numbers that the solver gets.

import type { Shop } from '../schema/shop-schema.ts';
import { sectionLosses } from '../section-losses.ts';
import { type SectionTree, wayToCollector } from '../section-tree.ts';
import { airOf } from '../shop-air.ts';
import { placeOf } from './place.ts';
import type { Problem } from './problem.ts';

/** Loss of the slot of an open gate where the document states none [-]. */
const USUAL_SLOT_LOSS = 0.1;

/**
 * Drops whose air meets no resistance before the next wye.
 *
 * @param shop - a shop in order but for this
 * @param tree - its tree
 * @returns a problem for each
 */
export function checkFreeEnds(shop: Shop, tree: SectionTree): Problem[] {
  const losses = sectionLosses(shop, tree, airOf(shop.air).density);
  return shop.drops.flatMap((drop, i) => {
    const way = wayToCollector(tree, tree.position.get(drop.into) ?? -1);
    const wye = way.findIndex((at) => (tree.inlets[at]?.length ?? 0) > 1);
    const branch = wye === -1 ? way : way.slice(0, wye);
    const gate = drop.gate === undefined ? 0 : (drop.gate.slotLoss ?? USUAL_SLOT_LOSS);
    const last = shop.sections[branch.at(-1) ?? -1]?.join;
    const join = last?.kind === 'fixed' && last.of === 'own' ? last.coefficient : 0;
    const resists = branch.some((at) => {
      const { run, change } = losses[at]!;
      return run.fixed + run.frictional + change > 0;
    });
    if (resists || gate + join > 0) return [];
    const message =
      'meets nothing that resists its air before the next wye: no hood loss, no gate, no length, ' +
      'no fittings; give it one of them';
    return [{ place: placeOf(['drops', i], shop), message }];
  });
}
