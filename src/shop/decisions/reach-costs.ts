// What a longer run of one drop costs the others, in the gate sets that are saved.

import { type NamedState, travelsWhenOpen } from '../gate-state.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { modelOf } from '../shop-model.ts';
import { type DropReport, stateReport } from '../state-report.ts';
import { type AddedRun, editOf, runDropId } from './choice.ts';
import { dropIn } from './solved-states.ts';

/** A drop before and after. */
export interface DropChange {
  readonly before: DropReport;
  readonly after: DropReport;
}

/** One gate set with all its open drops but the one that reaches further. */
export interface SetCost {
  readonly state: NamedState;
  readonly others: readonly DropChange[];
  /** The drop of the run itself where the set opens it and it was there before. */
  readonly own: DropChange | undefined;
}

/**
 * What an added run changes in every saved gate set. A new drop is opened beside those of the set;
 * one that was there before is open where the set opens it.
 *
 * @param shop - a shop in order
 * @param run - the run
 * @param length - its length, 0 or more [m]
 * @returns one entry a gate set, in the order of the document
 */
export function reachCosts(shop: Shop, run: AddedRun, length: number): readonly SetCost[] {
  const edited = editOf({ kind: 'run', run, length })(shop);
  const [today, then] = [modelOf(shop), modelOf(edited)];
  const drop = runDropId(run.target);
  const added = run.target.kind === 'new' ? [drop] : [];
  return shop.gateSets.map(({ name, open }) => {
    const before = stateReport(today, travelsWhenOpen(shop.drops, open));
    const after = stateReport(then, travelsWhenOpen(edited.drops, [...open, ...added]));
    const changes = before.drops
      .filter(({ travel }) => travel > 0)
      .map((each) => ({ before: each, after: dropIn(after, each.id) }));
    return {
      state: { kind: 'gate set', name, open },
      others: changes.filter((each) => each.before.id !== drop),
      own: changes.find((each) => each.before.id === drop),
    };
  });
}
