// Collectors side by side on the same ducts in the same air: every drop alone and every saved gate set,
// solved in full for each, with what each fails at and what a served drop costs.

import { pressureTerms, type PressureTerms } from '../../curve/pressure-terms.ts';
import { shaftPower, type ShaftPower } from '../../curve/shaft-power.ts';
import type { Study } from '../../study/progress.ts';
import { type NamedState, travelsWhenOpen, usualStates } from '../gate-state.ts';
import type { Collector } from '../schema/collector-schema.ts';
import type { Curve } from '../schema/curve-schema.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { modelOf } from '../shop-model.ts';
import { type DropReport, type OperatingPoint, stateReport } from '../state-report.ts';
import { type Choice, editOf } from './choice.ts';
import { type FootingNote, footingNotes } from './collector-footing.ts';
import { isServed } from './solved-states.ts';

/** What a drop has beyond its need; undefined where nobody said what it needs. */
export interface Spare {
  /** Flow over the need, below zero where it is short [m³/s] */
  readonly flow: number;
  /** That over the need [-] */
  readonly share: number;
}

/** A drop on one collector in one state. */
export interface CollectorDrop {
  readonly report: DropReport;
  readonly spare: Spare | undefined;
}

/** One collector in one state. */
export interface CollectorState {
  readonly state: NamedState;
  readonly outcome: string;
  readonly difficulties: readonly string[];
  readonly point: OperatingPoint | null;
  /** What the motor has to give there; undefined without an operating point. */
  readonly power: ShaftPower | undefined;
  /** From the entered points to the suction at that point. */
  readonly footing: PressureTerms | undefined;
  /** The open drops. */
  readonly drops: readonly CollectorDrop[];
}

/** What a collector costs for each drop that it serves. */
export interface PricePerDrop {
  readonly amount: number;
  readonly currency: string;
}

/** One collector. */
export interface CollectorRow {
  readonly name: string;
  readonly collector: Collector;
  /** Whether it is the one of the shop. */
  readonly isToday: boolean;
  readonly notes: readonly FootingNote[];
  readonly states: readonly CollectorState[];
  /** Drops that it serves, each alone [-] */
  readonly served: number;
  /** Those that it doesn't, alone, with the reason in the report. */
  readonly failures: readonly DropReport[];
  readonly price: Curve['price'];
  /** Undefined without a price or where it serves none. */
  readonly pricePerDrop: PricePerDrop | undefined;
  readonly choice: Choice;
}

/**
 * A curve as a collector on the shop's ducts: behind the filter and the separator of the shop, as far
 * as its points don't hold them, at the speed and with the wheel of its points. The very curve of the
 * shop runs as it does there.
 *
 * @param shop - the shop
 * @param curve - a curve
 * @returns the collector
 */
export function candidateOf(shop: Pick<Shop, 'collector'>, curve: Curve): Collector {
  const { collector } = shop;
  if (collector.curve === curve) return collector;
  return { curve, filter: collector.filter, separator: collector.separator };
}

/**
 * Collectors side by side.
 *
 * @param shop - a shop in order
 * @param candidates - the collectors; that of the shop may be one of them
 * @returns a study with a row for each, in the same order
 */
export function* collectorStudy(
  shop: Shop,
  candidates: readonly Collector[],
): Study<readonly CollectorRow[]> {
  const states = usualStates(shop);
  const total = candidates.length * states.length;
  const rows: CollectorRow[] = [];
  for (const collector of candidates) {
    const choice = { kind: 'collector', collector } as const;
    const model = modelOf(editOf(choice)(shop));
    const solved: CollectorState[] = [];
    for (const state of states) {
      const report = stateReport(model, travelsWhenOpen(shop.drops, state.open));
      const { outcome, difficulties, operatingPoint: point } = report;
      solved.push({
        state,
        outcome,
        difficulties,
        point,
        power: point === null ? undefined : shaftPower(collector, model.air, point.flow),
        footing: point === null ? undefined : pressureTerms(collector, model.air, point.flow),
        drops: report.drops.filter(({ travel }) => travel > 0).map(withSpare),
      });
      yield { done: rows.length * states.length + solved.length, total };
    }
    rows.push({ ...summary(shop, collector, solved), notes: footingNotes(collector, model.air) });
  }
  return rows;
}

function withSpare(report: DropReport): CollectorDrop {
  const { flow, need } = report;
  if (need === null || need === 0) return { report, spare: undefined };
  return { report, spare: { flow: flow - need, share: flow / need - 1 } };
}

function summary(
  shop: Shop,
  collector: Collector,
  states: readonly CollectorState[],
): Omit<CollectorRow, 'notes'> {
  // The states begin with each drop alone, in the order of the document.
  const alone = shop.drops.flatMap(({ id }, i) =>
    states[i]!.drops.filter(({ report }) => report.id === id).map(({ report }) => report),
  );
  const served = alone.filter(isServed).length;
  const { name, price } = collector.curve;
  return {
    name,
    collector,
    isToday: collector === shop.collector,
    states,
    served,
    failures: alone.filter((report) => !isServed(report)),
    price,
    pricePerDrop:
      price === undefined || served === 0
        ? undefined
        : { amount: price.amount / served, currency: price.currency },
    choice: { kind: 'collector', collector },
  };
}
