// The answer as a page of text that a maker can read: numbers in a table, then each state in words.

import type { Air } from '../air/air.ts';
import type { Shop } from '../shop/schema/shop-schema.ts';
import { sentence } from '../shop/sentence.ts';
import type { StateReport } from '../shop/state-report.ts';
import { formatQuantity } from '../units/format.ts';
import type { UnitSystem } from '../units/quantity.ts';
import { aloneTable, stateTable } from './state-tables.ts';

/** What can hurt, once, at the end. */
const CAUTIONS =
  'Cautions: wood dust harms lungs, burns, and can explode when suspended; plastic pipe gathers ' +
  'static; leave electrical work to the licensed. This is an aid to judgement, not a certificate; ' +
  'local codes come first.';

/** A state that was balanced. */
export interface SolvedState {
  /** What to write above it; undefined for a drop alone, since those share one table. */
  readonly heading: string | undefined;
  readonly report: StateReport;
}

/**
 * The answer as text.
 *
 * @param shop - the shop
 * @param air - its air
 * @param states - the states that were balanced
 * @param system - the units to show
 * @returns text that ends with a line end
 */
export function reportText(
  shop: Shop,
  air: Air,
  states: readonly SolvedState[],
  system: UnitSystem,
): string {
  const alone = states.filter(({ heading }) => heading === undefined).map(({ report }) => report);
  const named = states.filter(({ heading }) => heading !== undefined);
  const inWords = (report: StateReport) => sentence(shop, report, system);
  const blocks = [
    title(shop, air, system),
    ...(alone.length === 0
      ? []
      : [['Each drop alone', ...aloneTable(shop, alone, system)], alone.map(inWords)]),
    ...named.map(({ heading, report }) => [
      heading ?? '',
      ...stateTable(shop, report, system),
      inWords(report),
    ]),
    [CAUTIONS],
  ];
  const text = blocks.map((lines) => lines.join('\n')).join('\n\n');
  return `${text.replace(/[\u2009\u202f]/g, ' ')}\n`;
}

function title(shop: Shop, air: Air, system: UnitSystem): string[] {
  const { low, high } = shop.carryingRange;
  const slow = formatQuantity('velocity', system, low).number;
  const fast = formatQuantity('velocity', system, high).text;
  const density = formatQuantity('density', system, air.density).text;
  return [
    shop.name,
    `${shop.collector.curve.name}; air of ${density}; chips are carried from ${slow} to ${fast}.`,
  ];
}
