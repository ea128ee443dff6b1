// What is read of one section or drop of the run: its name and its figures, in the reader's units.

import type { Shop } from '../shop/schema/shop-schema.ts';
import type { ShopModel } from '../shop/shop-model.ts';
import type { StateReport } from '../shop/state-report.ts';
import type { Verdict } from '../shop/verdict.ts';
import { formatQuantity } from '../units/format.ts';
import type { UnitSystem } from '../units/quantity.ts';
import type { RunState } from './run-view.ts';
import type { Part } from './selected-part.ts';

/** A part as it is read. */
export interface PartReading {
  readonly name: string;
  readonly figures: readonly string[];
}

/** What each state of a section is called. */
export const RUN_STATE_WORDS: Readonly<Record<RunState, string>> = {
  carries: 'carries',
  settles: 'chips settle',
  tight: 'tight',
  still: 'still',
};

/**
 * Reads one part.
 *
 * @param shop - names and lengths
 * @param model - the shop, ready to be balanced
 * @param report - one state of its gates
 * @param part - what is read
 * @param state - how the section fares
 * @param system - the units to speak in
 * @returns name and figures; undefined where the shop has no such part
 */
export function partReading(
  shop: Shop,
  model: ShopModel,
  report: StateReport,
  part: Part,
  state: RunState,
  system: UnitSystem,
): PartReading | undefined {
  const list: readonly { readonly id: string }[] =
    part.kind === 'drop' ? shop.drops : shop.sections;
  const at = list.findIndex(({ id }) => id === part.id);
  if (at < 0) return undefined;
  return part.kind === 'drop'
    ? dropReading(shop, report, at, system)
    : sectionReading(shop, model, report, at, state, system);
}

function sectionReading(
  shop: Shop,
  model: ShopModel,
  report: StateReport,
  at: number,
  state: RunState,
  system: UnitSystem,
): PartReading {
  const section = shop.sections[at]!;
  const { velocity, flow, loss, joinLoss, staticPressure } = report.sections[at]!;
  const { diameter } = model.ducts.sections[at]!.pipe;
  const size = formatQuantity('diameter', system, diameter).text;
  const length = formatQuantity('length', system, section.length).text;
  const pressure = (si: number) => formatQuantity('pressure', system, si).text;
  const speed = formatQuantity('velocity', system, velocity).text;
  return {
    name: section.name ?? section.id,
    figures: [
      state === 'still' ? 'still' : `${speed}, ${RUN_STATE_WORDS[state]}`,
      ...(state === 'still' ? [] : [formatQuantity('flow', system, flow).text]),
      `${size} × ${length}`,
      ...(state === 'still' ? [] : [`loses ${pressure(loss + joinLoss)}`]),
      `static ${pressure(-staticPressure)}`,
    ],
  };
}

function dropReading(shop: Shop, report: StateReport, at: number, system: UnitSystem): PartReading {
  const { name, into } = shop.drops[at]!;
  const drop = report.drops[at]!;
  if (drop.verdict === 'shut') return { name, figures: ['shut'] };
  const { need, slowest, verdict } = drop;
  const needed = need === null ? '' : `, needs ${formatQuantity('flow', system, need).number}`;
  const speed = formatQuantity('velocity', system, drop.velocity).text;
  const slow = shop.sections.find(({ id }) => id === slowest.section);
  return {
    name,
    figures: [
      `${speed}, ${verdictWord(verdict)}`,
      ...(slow === undefined || slow.id === into
        ? []
        : [
            `${formatQuantity('velocity', system, slowest.velocity).number} in ${slow.name ?? slow.id}`,
          ]),
      `${formatQuantity('flow', system, drop.flow).text}${needed}`,
      `hood ${formatQuantity('pressure', system, drop.hoodStaticPressure).text}`,
    ],
  };
}

function verdictWord(verdict: Verdict): string {
  return verdict === 'short' ? 'short of air' : verdict;
}
