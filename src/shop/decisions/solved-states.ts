// A shop solved for the states that decisions are judged by, in the very order of the command line, so
// that the figures are the same to the last digit.

import { type NamedState, travelsWhenOpen, usualStates } from '../gate-state.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { modelOf, type ShopModel } from '../shop-model.ts';
import { type DropReport, type StateReport, stateReport } from '../state-report.ts';

/** A state with what comes of it. */
export interface SolvedState {
  readonly state: NamedState;
  readonly report: StateReport;
}

/**
 * Solves each drop alone and every saved gate set.
 *
 * @param shop - a shop in order
 * @param model - its model, made anew if none is given
 * @returns one report a state, in the order of the document
 */
export function solvedStates(shop: Shop, model: ShopModel = modelOf(shop)): readonly SolvedState[] {
  return usualStates(shop).map((state) => ({
    state,
    report: stateReport(model, travelsWhenOpen(shop.drops, state.open)),
  }));
}

/**
 * The drop that a state is about, or any other.
 *
 * @param report - one state of the gates
 * @param id - id of the drop
 * @returns its report
 * @throws RangeError if there is no such drop
 */
export function dropIn(report: Pick<StateReport, 'drops'>, id: string): DropReport {
  const drop = report.drops.find((each) => each.id === id);
  if (drop === undefined) throw new RangeError(`no drop has the id ${id}`);
  return drop;
}

/**
 * Whether a drop is served: its chips are carried and it gets what it needs. A pipe that is tight
 * throttles the collector but serves.
 *
 * @param drop - a drop in one state
 * @returns true where it is
 */
export function isServed({ verdict }: Pick<DropReport, 'verdict'>): boolean {
  return verdict === 'carries' || verdict === 'tight';
}
