// The trail of operating points: the states of the gates that were tried, each once.

import type { Shop } from '../shop/schema/shop-schema.ts';
import type { ShopModel } from '../shop/shop-model.ts';
import type { StateReport } from '../shop/state-report.ts';

/** A state that was tried. */
export interface Tried {
  /** What was open. */
  readonly name: string;
  /** Flow at the flange [m³/s] */
  readonly flow: number;
  /** Total suction there [Pa] */
  readonly suction: number;
  /** Air, collector and ducts it was tried with. */
  readonly model: ShopModel;
}

/** Older states are forgotten. */
const MOST_TRIED = 8;
/** Two states that differ less, in parts of the flow, are one on the page [-]. */
const SAME_FLOW = 0.003;

/**
 * The present state as one to remember.
 *
 * @param shop - for the names
 * @param model - what it was balanced with
 * @param report - the state
 * @returns the state, or undefined where nothing is open or nothing balances
 */
export function triedState(
  shop: Pick<Shop, 'drops'>,
  model: ShopModel,
  report: StateReport,
): Tried | undefined {
  const point = report.operatingPoint;
  if (!point || report.open.length === 0) return undefined;
  const names = shop.drops.filter(({ id }) => report.open.includes(id)).map(({ name }) => name);
  const name = names.length > 2 ? `${names.length} open` : names.join(' + ');
  return { name, flow: point.flow, suction: point.suction, model };
}

/**
 * Adds a state to the trail. One at the same place on the page takes the place of the former.
 *
 * @param trail - the states tried, the latest last
 * @param state - the latest
 * @returns the trail with it, at most eight long
 */
export function addTried(trail: readonly Tried[], state: Tried): readonly Tried[] {
  const others = trail.filter((tried) => !isSamePlace(tried, state));
  return [...others, state].slice(-MOST_TRIED);
}

/**
 * Whether two points lie on one place of the page.
 *
 * @param a - a flow at the flange [m³/s]
 * @param b - another [m³/s]
 * @returns true if they differ by less than 0.3 %
 */
export function isSamePlace(a: { readonly flow: number }, b: { readonly flow: number }): boolean {
  return Math.abs(a.flow - b.flow) <= SAME_FLOW * Math.max(a.flow, b.flow);
}
