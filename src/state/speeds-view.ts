// The speed at each drop before and after the last change, in the reader's units and words.

import { changeSentence } from '../shop/change-sentence.ts';
import type { Shop } from '../shop/schema/shop-schema.ts';
import type { StateReport } from '../shop/state-report.ts';
import { formatQuantity } from '../units/format.ts';
import { type UnitSystem, unitLabel } from '../units/quantity.ts';
import { type DropView, dropViews } from './drop-views.ts';
import type { Settled } from './last-change.ts';

/** One drop now, with what it was before. */
export interface SpeedRow {
  readonly drop: DropView;
  /** Its speeds before the last change, if it was open then. */
  readonly former: Pick<DropView, 'speed' | 'slowest'> | undefined;
}

/** All drops, ready to be drawn. */
export interface SpeedsView {
  readonly rows: readonly SpeedRow[];
  readonly range: Shop['carryingRange'];
  /** The carrying range as it is written. */
  readonly rangeText: string;
  readonly unit: string;
  /** What the last change did, or what is to be seen where there was none. */
  readonly sentence: string;
  readonly hasFormer: boolean;
}

/**
 * The drops with their speeds.
 *
 * @param shop - for names and gates
 * @param shown - the state that numbers are taken from
 * @param settled - the state that words and verdicts are taken from
 * @param former - the state before the last change
 * @param system - the units to speak in
 * @returns the drops in the order of the document
 */
export function speedsView(
  shop: Shop,
  shown: StateReport,
  settled: StateReport,
  former: Settled | undefined,
  system: UnitSystem,
): SpeedsView {
  const before = former && dropViews(former.shop, former.report, former.report, system);
  const { low, high } = shop.carryingRange;
  const number = (speed: number) => formatQuantity('velocity', system, speed).number;
  const unit = unitLabel('velocity', system);
  return {
    rows: dropViews(shop, shown, settled, system).map((drop) => {
      const then = before?.find(({ id }) => id === drop.id);
      return { drop, former: then?.speed ? then : undefined };
    }),
    range: shop.carryingRange,
    rangeText: `${number(low)} to ${number(high)}`,
    unit,
    sentence: former
      ? changeSentence(former, { shop, report: settled }, system)
      : `Chips keep moving between ${number(low)} and ${number(high)}\u2009${unit}.`,
    hasFormer: former !== undefined,
  };
}
