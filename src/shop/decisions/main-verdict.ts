// What another main does to each drop: helps, hurts, helps only while a second gate is open as well.
// The second gate is looked for among all others: it must let every section on the drop's way carry,
// leave the drop what it needs, and where it was well alone no less air than it has so today.

import { travelsWhenOpen } from '../gate-state.ts';
import type { Shop } from '../schema/shop-schema.ts';
import type { ShopModel } from '../shop-model.ts';
import { type DropReport, stateReport } from '../state-report.ts';
import type { MainFigures } from './main-state.ts';
import { quickShop, quickVerdict, solveQuickly } from './quick-states.ts';
import { dropIn, isServed } from './solved-states.ts';
import type { Verdict } from '../verdict.ts';

/** What a change does to a drop. */
export type EffectKind =
  /** More air, and nothing that was well is not so any more. */
  | 'helps'
  /** Less air, or chips that settle where they were carried, whatever else is open. */
  | 'hurts'
  /** Chips settle with this gate alone, but not with a second one open. */
  | 'second gate'
  | 'same';

/** A second gate that keeps the way clean. */
export interface Bleed {
  /** Id of the drop whose gate it is. */
  readonly drop: string;
  /** The first drop while both are open. */
  readonly report: DropReport;
}

/** A drop alone with another main. */
export interface DropVerdict {
  readonly id: string;
  readonly name: string;
  readonly kind: EffectKind;
  /** The drop alone today and with the other main. */
  readonly before: DropReport;
  readonly after: DropReport;
  /** Change of its flow over today's [-] */
  readonly gain: number;
  /** Second gates that keep its way clean, the one that leaves it the most air first. */
  readonly bleeds: readonly Bleed[];
}

/** A flow that changes by less, over what it was, did not change [-]. */
const LEAST_CHANGE = 0.005;
/** Second gates that are solved in full; of the others only that they would do is known. */
const MOST_BLEEDS = 3;

/**
 * The verdict on a drop.
 *
 * @param shop - the shop as it is today
 * @param position - position of the drop [-]
 * @param today - the figures of the shop today
 * @param then - its figures with the other main
 * @param model - the shop with the other main, ready to be balanced
 * @returns what the other main does to the drop
 */
export function judgeDrop(
  shop: Shop,
  position: number,
  today: MainFigures,
  then: MainFigures,
  model: ShopModel,
): DropVerdict {
  const { id, name } = shop.drops[position]!;
  const before = aloneIn(today, position, id);
  const after = aloneIn(then, position, id);
  const gain = gainOf(before, after);
  const bleeds = after.verdict === 'settles' ? bleedsFor(shop, model, position, before) : [];
  const kind = effectOf(before, after, bleeds.length > 0);
  return { id, name, kind, before, after, gain, bleeds };
}

function aloneIn(figures: MainFigures, position: number, id: string): DropReport {
  // The states begin with each drop alone, in the order of the document.
  return dropIn(figures.states[position]!, id);
}

/** What of a drop alone a change is judged by. */
export interface JudgedDrop {
  readonly verdict: Verdict;
  /** Flow into it [m³/s] */
  readonly flow: number;
  /** Lowest speed on its way [m/s] */
  readonly slowest: { readonly velocity: number };
}

/**
 * What a change does to a drop.
 *
 * @param before - the drop alone today
 * @param after - the drop alone afterwards
 * @param hasBleed - whether a second gate would keep its way clean
 * @returns the kind of effect
 */
export function effectOf(before: JudgedDrop, after: JudgedDrop, hasBleed: boolean): EffectKind {
  const gain = gainOf(before, after);
  const slower = after.slowest.velocity < before.slowest.velocity * (1 - LEAST_CHANGE);
  if (after.verdict === 'settles' && (before.verdict !== 'settles' || slower)) {
    return hasBleed ? 'second gate' : 'hurts';
  }
  if (isServed(before) && !isServed(after)) return 'hurts';
  if (!isServed(before) && isServed(after)) return 'helps';
  if (Math.abs(gain) < LEAST_CHANGE) return 'same';
  return gain > 0 ? 'helps' : 'hurts';
}

function gainOf(before: JudgedDrop, after: JudgedDrop): number {
  return before.flow > 0 ? after.flow / before.flow - 1 : 0;
}

/**
 * Whether a flow is enough with a second gate open: no less than the drop has alone today, or anything
 * where it is not well today.
 *
 * @param before - the drop alone today
 * @param flow - flow into it while both gates are open [m³/s]
 * @returns true where it is
 */
export function isEnoughAir(before: JudgedDrop, flow: number): boolean {
  return flow >= before.flow || !isServed(before);
}

/** Every second gate that would do, quickly; the best of them solved in full. */
function bleedsFor(shop: Shop, model: ShopModel, position: number, before: DropReport): Bleed[] {
  const quick = quickShop(model);
  const { id } = shop.drops[position]!;
  const found: { readonly drop: string; readonly flow: number }[] = [];
  for (const other of shop.drops) {
    if (other.id === id) continue;
    const travels = travelsWhenOpen(shop.drops, [id, other.id]);
    if (solveQuickly(quick, travels) === 'none') continue;
    const verdict = quickVerdict(quick, position, travels[position]!);
    const { flow } = quick.figures;
    if (isServed({ verdict }) && isEnoughAir(before, flow)) found.push({ drop: other.id, flow });
  }
  return found
    .toSorted((a, b) => b.flow - a.flow)
    .slice(0, MOST_BLEEDS)
    .map(({ drop }) => {
      const travels = travelsWhenOpen(shop.drops, [id, drop]);
      return { drop, report: dropIn(stateReport(model, travels), id) };
    });
}
