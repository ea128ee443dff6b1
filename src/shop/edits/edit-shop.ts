// Edits of what the whole shop shares: its name, its air, its carrying range and its collector.

import type { ShopAir } from '../schema/air-schema.ts';
import type { Collector } from '../schema/collector-schema.ts';
import type { Curve } from '../schema/curve-schema.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { type Changes, changed, type ShopEdit } from './change.ts';

/**
 * Gives the shop another name.
 *
 * @param name - one line of text
 * @returns the edit
 */
export function renameShop(name: string): ShopEdit {
  return (shop) => changed(shop, { name });
}

/**
 * Sets the air of the shop.
 *
 * @param air - the air of a room, or plain numbers
 * @returns the edit
 */
export function setAir(air: ShopAir): ShopEdit {
  return (shop) => changed(shop, { air });
}

/**
 * Sets the speeds that carry chips.
 *
 * @param carryingRange - low below high [m/s]
 * @returns the edit
 */
export function setCarryingRange(carryingRange: Shop['carryingRange']): ShopEdit {
  return (shop) => changed(shop, { carryingRange });
}

/**
 * Puts another curve in place of the collector's. How the collector runs, its filter and its
 * separator stay as they are.
 *
 * @param curve - a curve document
 * @returns the edit
 */
export function replaceCurve(curve: Curve): ShopEdit {
  return setCollector({ curve });
}

/**
 * Sets parts of the collector: its curve, its filter, its separator, how fast it runs.
 *
 * @param changes - what is to change; a ratio that is undefined goes back to 1 [-]
 * @returns the edit
 */
export function setCollector(changes: Changes<Collector>): ShopEdit {
  return (shop) => changed(shop, { collector: changed(shop.collector, changes) });
}
