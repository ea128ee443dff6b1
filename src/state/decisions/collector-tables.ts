// Collectors side by side as tables: each in one row, then drop by drop or collector by collector.

import type { ShaftPower } from '../../curve/shaft-power.ts';
import type { CollectorDrop, CollectorState } from '../../shop/decisions/collectors.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { sectionLabelInside } from '../../shop/section-label.ts';
import { verdictWords } from '../../shop/verdict-words.ts';
import { formatQuantity } from '../../units/format.ts';
import { unitLabel, type UnitSystem } from '../../units/quantity.ts';
import type { AnswerCell, AnswerRow } from './answer-rows.ts';
import { ORIGIN_WORDS } from './candidates.ts';
import type { ComparedCollector } from './question.ts';
import type { AnswerRows } from './reach-tables.ts';

/** A motor that has to give more than this is overloaded [-]. */
const FULL_LOAD = 1;

/**
 * Every collector in one row.
 *
 * @param rows - the collectors
 * @param shop - the shop, for its names
 * @param system - the units to write in
 * @returns the table; each row but that of today can be taken over
 */
export function collectorTable(
  rows: readonly ComparedCollector[],
  shop: Shop,
  system: UnitSystem,
): AnswerRows {
  const most = Math.max(...rows.map(({ served }) => served));
  return {
    columns: [
      { name: 'collector' },
      { name: 'drops served', unit: 'alone' },
      { name: 'highest load', unit: 'of the motor' },
      { name: 'price', unit: '' },
      { name: 'per drop served', unit: '' },
      { name: 'whose curve' },
      { name: 'drops it fails, and why' },
    ],
    rows: rows.map((row) => ({
      key: row.name,
      cells: [
        row.name,
        { text: `${row.served} of ${shop.drops.length}`, by: row.served },
        highestLoad(row, system),
        money(row.price, system, 'not entered'),
        money(row.pricePerDrop, system, '–'),
        ORIGIN_WORDS[row.origin],
        failureWords(row, shop, system),
      ],
      ...markOf(row, most),
      ...(row.isToday ? {} : { take: `collector: ${row.name}` }),
    })),
  };
}

function markOf(row: ComparedCollector, most: number): { readonly mark?: string } {
  const isBest = row.served === most && most > 0;
  if (row.isToday) return { mark: isBest ? 'today, serves most' : 'today' };
  return isBest ? { mark: 'serves most' } : {};
}

/** The first with its reason, and how many besides; the close table has every one. */
function failureWords({ failures }: ComparedCollector, shop: Shop, system: UnitSystem): string {
  const [first, ...others] = failures;
  if (first === undefined) return 'none';
  const words = `${first.name} ${verdictWords(shop, first, system)}`;
  return others.length === 0 ? words : `${words}; and ${others.length} more`;
}

function money(
  price: { readonly amount: number; readonly currency: string } | undefined,
  system: UnitSystem,
  none: string,
): AnswerCell {
  if (price === undefined) return { text: none };
  const mark = system === 'us' ? ',' : '\u202f';
  const amount = String(Math.round(price.amount)).replace(/\B(?=(\d{3})+$)/g, mark);
  return { text: `${amount}\u2009${price.currency}`, by: price.amount };
}

function highestLoad({ states }: ComparedCollector, system: UnitSystem): AnswerCell {
  const loads = states.map(({ power }) => loadCell(power, system));
  const known = loads.filter(({ by }) => by !== undefined);
  return known.toSorted((a, b) => (b.by ?? 0) - (a.by ?? 0))[0] ?? { text: 'not known' };
}

/** Its part of the nameplate, or its power where there is none. */
function loadCell(power: ShaftPower | undefined, system: UnitSystem): AnswerCell {
  if (power?.kind !== 'known') return { text: 'not known' };
  const { load } = power;
  if (load === undefined) {
    return { text: formatQuantity('power', system, power.power).text, by: power.power };
  }
  const words = `${Math.round(100 * load)}\u2009%`;
  return { text: load > FULL_LOAD ? `${words}, overloaded` : words, by: load };
}

/** What is looked at closely: one collector on every drop, or one state on every collector. */
export type CloseLook =
  | { readonly kind: 'collector'; readonly name: string }
  | { readonly kind: 'state'; readonly index: number };

/**
 * Drop by drop for one collector, or collector by collector for one state of the gates.
 *
 * @param rows - the collectors
 * @param look - what is looked at
 * @param shop - the shop, for its names
 * @param system - the units to write in
 * @returns the table
 */
export function closeTable(
  rows: readonly ComparedCollector[],
  look: CloseLook,
  shop: Shop,
  system: UnitSystem,
): AnswerRows {
  const chosen = look.kind === 'collector' ? rows.filter(({ name }) => name === look.name) : rows;
  const isOne = look.kind === 'collector';
  const speed = unitLabel('velocity', system);
  return {
    columns: [
      { name: isOne ? 'open' : 'collector' },
      { name: 'drop' },
      { name: 'air', unit: unitLabel('flow', system) },
      { name: 'over its need', unit: unitLabel('flow', system) },
      { name: 'own pipe', unit: speed },
      { name: 'slowest', unit: speed },
      { name: 'where that is' },
      { name: 'load', unit: 'of the motor' },
      { name: 'verdict, and why' },
    ],
    rows: chosen.flatMap((row) =>
      row.states.flatMap((state, at): AnswerRow[] => {
        if (look.kind === 'state' && at !== look.index) return [];
        const head = isOne ? stateName(state) : row.name;
        const isToday = !isOne && row.isToday ? { mark: 'today' } : {};
        if (state.drops.length === 0 || state.point === null) {
          return [{ key: `${row.name} ${at}`, cells: [head, state.outcome], ...isToday }];
        }
        return state.drops.map((drop) => ({
          key: `${row.name} ${at} ${drop.report.id}`,
          cells: [head, ...dropCells(drop, state, shop, system)],
          ...isToday,
        }));
      }),
    ),
  };
}

/** What is open in a state. */
export function stateName({ state }: Pick<CollectorState, 'state'>): string {
  return state.kind === 'alone' ? `${state.name} alone` : state.name;
}

function dropCells(
  { report, spare }: CollectorDrop,
  { power }: CollectorState,
  shop: Shop,
  system: UnitSystem,
): (string | AnswerCell)[] {
  const figure = (quantity: 'flow' | 'velocity', si: number): AnswerCell => ({
    text: formatQuantity(quantity, system, si).number,
    by: si,
  });
  const { slowest } = report;
  const section = shop.sections.find(({ id }) => id === slowest.section);
  return [
    report.name,
    figure('flow', report.flow),
    spare === undefined ? 'no need entered' : figure('flow', spare.flow),
    figure('velocity', report.velocity),
    figure('velocity', slowest.velocity),
    sectionLabelInside(section ?? { id: slowest.section }),
    loadCell(power, system),
    { text: verdictWords(shop, report, system), verdict: report.verdict },
  ];
}
