// A shop made ready to be asked: its air, its collector and its ducts, computed once. Asking for one
// gate state after another is cheap, and each begins where the last one ended.

import type { Air } from '../air/air.ts';
import { type CollectorCurve, collectorCurve } from '../curve/collector-curve.ts';
import { createWorkspace, type Workspace } from '../solve/workspace.ts';
import { networkOf, type ShopNetwork } from './network-of.ts';
import type { Shop } from './schema/shop-schema.ts';
import { airOf } from './shop-air.ts';

/** All that a gate state is balanced with. */
export interface ShopModel {
  readonly air: Air;
  readonly curve: CollectorCurve;
  readonly ducts: ShopNetwork;
  readonly carryingRange: Shop['carryingRange'];
  /** Ids of the sections, in the order of the document. */
  readonly sectionIds: readonly string[];
  /** The solver's workspace: the state balanced last is where the next begins. */
  readonly work: Workspace;
  /** Another, for the ducts' own curve, so that drawing it doesn't spoil the beginning of the next. */
  readonly curveWork: Workspace;
}

/**
 * The model of a shop.
 *
 * @param shop - a shop in order
 * @returns air, collector and ducts, ready to be balanced
 * @throws RangeError where the shop is not in order
 */
export function modelOf(shop: Shop): ShopModel {
  const air = airOf(shop.air);
  const ducts = networkOf(shop, air);
  return {
    air,
    curve: collectorCurve(shop.collector, air),
    ducts,
    carryingRange: shop.carryingRange,
    sectionIds: shop.sections.map((section) => section.id),
    work: createWorkspace(ducts.network),
    curveWork: createWorkspace(ducts.network),
  };
}
