// A shop's states by flows alone, for searches that look at very many: no report is written, and what
// is found is solved again in full before its figures are shown.

import { findCrossings } from '../../solve/balance.ts';
import { inNetworkOrder } from '../../solve/section-order.ts';
import {
  areasOf,
  type DropFigures,
  type DropWay,
  emptyFigures,
  readFigures,
} from '../../study/drop-figures.ts';
import type { Travels } from '../gate-state.ts';
import { gateCoefficients, type ShopNetwork } from '../network-of.ts';
import type { ShopModel } from '../shop-model.ts';
import { type Verdict, verdictOn } from '../verdict.ts';

/** What quick states of a shop are read with. */
export interface QuickShop {
  readonly model: ShopModel;
  /** Area of each section in the network's order [m²] */
  readonly area: Float64Array;
  readonly ways: readonly DropWay[];
  readonly figures: DropFigures;
}

/**
 * Prepares a shop for quick states.
 *
 * @param model - the shop, ready to be balanced
 * @returns what the states are read with
 */
export function quickShop(model: ShopModel): QuickShop {
  return {
    model,
    area: areasOf(model.ducts.network),
    ways: dropWays(model.ducts),
    figures: emptyFigures(),
  };
}

/**
 * The ways of the drops by places in the network's order.
 *
 * @param ducts - the ducts of a shop
 * @returns one way a drop, in the order of the document
 */
export function dropWays({ network, drops }: ShopNetwork): readonly DropWay[] {
  const placeOf = new Int32Array(network.count);
  network.order.forEach((input, place) => {
    placeOf[input] = place;
  });
  return drops.map(({ way }) => ({ way: Int32Array.from(way, (input) => placeOf[input]!) }));
}

/**
 * Gate coefficients in the order of the network.
 *
 * @param ducts - the ducts of a shop
 * @param travels - travel of each drop's gate [-]
 * @returns loss coefficient of each section's gate, in the network's order [-]
 */
export function orderedGates(ducts: ShopNetwork, travels: Travels): Float64Array {
  return inNetworkOrder(ducts.network, gateCoefficients(ducts, travels));
}

/**
 * Solves a state for its flows; they are left in the model's workspace.
 *
 * @param shop - the shop
 * @param travels - travel of each drop's gate [-]
 * @returns 'solved', or 'none' where there is no operating point
 */
export function solveQuickly({ model }: QuickShop, travels: Travels): 'solved' | 'none' {
  const { network } = model.ducts;
  const gate = orderedGates(model.ducts, travels);
  return findCrossings(network, model.work, gate, model.curve).length > 0 ? 'solved' : 'none';
}

/**
 * The verdict on a drop at the flows that were solved last.
 *
 * @param shop - the shop
 * @param drop - position of the drop [-]
 * @param travel - travel of its gate [-]
 * @returns the verdict; the figures that it turns on are in `shop.figures`
 */
export function quickVerdict(shop: QuickShop, drop: number, travel: number): Verdict {
  const { model, area, ways, figures } = shop;
  readFigures(ways[drop]!, model.work.flow, area, figures);
  const { flow, velocity, slowest } = figures;
  const { need } = model.ducts.drops[drop]!;
  return verdictOn({ open: travel > 0, flow, need, velocity, slowest }, model.carryingRange);
}
