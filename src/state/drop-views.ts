// The drops as their rows show them: everything in the reader's units and words.

import type { Shop } from '../shop/schema/shop-schema.ts';
import type { DropReport, StateReport } from '../shop/state-report.ts';
import type { Verdict } from '../shop/verdict.ts';
import { type FormattedQuantity, formatQuantity } from '../units/format.ts';
import type { UnitSystem } from '../units/quantity.ts';

/** A speed with the number to draw it and the words to write it. */
export interface SpeedView {
  /** [m/s] */
  readonly velocity: number;
  readonly shown: FormattedQuantity;
}

/** One drop, ready to be shown. */
export interface DropView {
  readonly id: string;
  readonly name: string;
  /** 0 shut to 1 drawn right out [-]; undefined where there is no gate. */
  readonly travel: number | undefined;
  /** Undefined while it is shut: what leaks is not worth a number. */
  readonly flow: FormattedQuantity | undefined;
  readonly need: FormattedQuantity | undefined;
  /** In the drop's own pipe; undefined while it is shut. */
  readonly speed: SpeedView | undefined;
  /** In the slowest section that its air passes, if that isn't its own; undefined while shut. */
  readonly slowest: (SpeedView & { readonly name: string }) | undefined;
  readonly range: Shop['carryingRange'];
  readonly verdict: Verdict;
}

/** What of a drop is seen to move while a gate does. */
export interface DropMotion {
  /** 0 shut to 1 drawn right out [-]. */
  readonly travel: number;
  /** In the drop's own pipe, and the slowest on its way; 0 while it is shut [m/s]. */
  readonly speed: number;
  readonly slowest: number;
}

/** What leaks through a shut gate is not shown. */
const AT_REST: DropMotion = { travel: 0, speed: 0, slowest: 0 };

/**
 * What moves of the drops in one state of the gates.
 *
 * @param shown - the state
 * @returns one for each drop, in the order of the document
 */
export function dropMotions(shown: StateReport): DropMotion[] {
  return shown.drops.map(({ travel, velocity, slowest }) =>
    travel > 0 ? { travel, speed: velocity, slowest: slowest.velocity } : AT_REST,
  );
}

/**
 * The drops of a shop in one state of its gates.
 *
 * @param shop - for names and gates
 * @param shown - the state that numbers are taken from
 * @param settled - the state that verdicts are taken from; the gates may be on the way to it
 * @param system - the units to speak in
 * @returns the drops, in the order of the document
 */
export function dropViews(
  shop: Shop,
  shown: StateReport,
  settled: StateReport,
  system: UnitSystem,
): DropView[] {
  const speedView = (velocity: number): SpeedView => ({
    velocity,
    shown: formatQuantity('velocity', system, velocity),
  });
  const slowestView = (report: DropReport, own: string): DropView['slowest'] => {
    const { section, velocity } = report.slowest;
    if (section === own) return undefined;
    const name = shop.sections.find(({ id }) => id === section)?.name ?? section;
    return { ...speedView(velocity), name };
  };
  return shop.drops.map((drop, i) => {
    const report = shown.drops[i]!;
    const isOpen = report.travel > 0;
    return {
      id: drop.id,
      name: drop.name,
      travel: drop.gate === undefined ? undefined : report.travel,
      flow: isOpen ? formatQuantity('flow', system, report.flow) : undefined,
      need: report.need === null ? undefined : formatQuantity('flow', system, report.need),
      speed: isOpen ? speedView(report.velocity) : undefined,
      slowest: isOpen ? slowestView(report, drop.into) : undefined,
      range: shop.carryingRange,
      verdict: settled.drops[i]!.verdict,
    };
  });
}
