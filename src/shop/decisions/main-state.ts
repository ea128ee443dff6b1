// One state of the gates as it concerns the main: the open drops, and the slowest place of the main
// that their air passes.

import type { NamedState } from '../gate-state.ts';
import type { Shop } from '../schema/shop-schema.ts';
import type { DropReport, StateReport } from '../state-report.ts';

/** One state of the gates with one main. */
export interface MainState {
  readonly state: NamedState;
  readonly outcome: string;
  readonly difficulties: readonly string[];
  /** Flow at the flange [m³/s], or undefined without an operating point */
  readonly flow: number | undefined;
  /** The open drops. */
  readonly drops: readonly DropReport[];
  /** Lowest speed in those sections of the main that their air passes [m/s]. */
  readonly mainSlowest: { readonly section: string; readonly velocity: number } | undefined;
}

/** A main in every state. */
export interface MainFigures {
  readonly states: readonly MainState[];
}

/**
 * One state with what concerns the main.
 *
 * @param shop - the shop that was solved
 * @param state - the state
 * @param report - what came of it
 * @param sections - ids of the sections that count as the main
 * @returns the open drops and the slowest place of the main
 */
export function mainState(
  shop: Pick<Shop, 'sections' | 'drops'>,
  state: NamedState,
  report: StateReport,
  sections: readonly string[],
): MainState {
  const drops = report.drops.filter(({ travel }) => travel > 0);
  const passed = new Set<string>();
  for (const { id } of drops) {
    let at = shop.drops.find((drop) => drop.id === id)?.into;
    while (at !== undefined && !passed.has(at)) {
      passed.add(at);
      const here = at;
      at = shop.sections.find((section) => section.id === here)?.into;
    }
  }
  const slowest = report.sections
    .filter(({ id }) => passed.has(id) && sections.includes(id))
    .toSorted((a, b) => a.velocity - b.velocity)[0];
  return {
    state,
    outcome: report.outcome,
    difficulties: report.difficulties,
    flow: report.operatingPoint?.flow,
    drops,
    mainSlowest: slowest && { section: slowest.id, velocity: slowest.velocity },
  };
}
