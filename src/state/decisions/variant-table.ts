// The shops of a family side by side: each drop alone, and what has to be bought.

import { isServed } from '../../shop/decisions/solved-states.ts';
import type { DropReport } from '../../shop/state-report.ts';
import { formatQuantity } from '../../units/format.ts';
import { unitLabel, type UnitSystem } from '../../units/quantity.ts';
import type { AnswerCell, AnswerColumn, AnswerRow, FootRow } from './answer-rows.ts';
import type { ShopVariant } from './family.ts';
import { boughtWords } from './bought-words.ts';

/** A table of answers. */
export interface VariantTable {
  readonly columns: readonly AnswerColumn[];
  readonly rows: readonly AnswerRow[];
}

/**
 * A row for each drop, with its air and its slowest speed in each shop.
 *
 * @param family - the shops, the first one first
 * @param reports - each drop alone, shop by shop
 * @param system - the units to write in
 * @returns the table
 */
export function variantTable(
  family: readonly ShopVariant[],
  reports: readonly (readonly DropReport[])[],
  system: UnitSystem,
): VariantTable {
  const drops = new Map<string, string>();
  for (const { name, id } of reports.flat()) drops.set(id, drops.get(id) ?? name);
  const cellsIn = (at: number, id: string): (string | AnswerCell)[] => {
    const drop = reports[at]?.find((each) => each.id === id);
    if (drop === undefined) return ['–', '–'];
    const { flow, slowest, verdict } = drop;
    return [
      { text: formatQuantity('flow', system, flow).number, by: flow },
      {
        text: formatQuantity('velocity', system, slowest.velocity).number,
        by: slowest.velocity,
        verdict,
      },
    ];
  };
  return {
    columns: [
      { name: 'drop, alone' },
      ...family.flatMap((variant) => [
        { name: 'air', unit: unitLabel('flow', system), group: variantWords(variant) },
        { name: 'slowest', unit: unitLabel('velocity', system), group: variantWords(variant) },
      ]),
    ],
    rows: [...drops].map(([id, name]) => ({
      key: id,
      cells: [name, ...family.flatMap((_, at) => cellsIn(at, id))],
    })),
  };
}

/**
 * What stands below the drops: how many are served alone, and what has to be bought.
 *
 * @param family - the shops, the first one first
 * @param reports - each drop alone, shop by shop
 * @param system - the units to write in
 * @returns rows of a cell a shop, below both of its columns
 */
export function variantFoot(
  family: readonly ShopVariant[],
  reports: readonly (readonly DropReport[])[],
  system: UnitSystem,
): readonly FootRow[] {
  const first = family[0]!.shop;
  const row = (name: string, textOf: (variant: ShopVariant, at: number) => string): FootRow => ({
    name,
    cells: family.map((variant, at) => ({ text: textOf(variant, at), span: 2 })),
  });
  return [
    row('drops served', (_, at) => {
      const drops = reports[at] ?? [];
      return `${drops.filter(isServed).length} of ${drops.length}`;
    }),
    row('to be bought', ({ shop, isFirst }) => (isFirst ? '–' : boughtWords(first, shop, system))),
  ];
}

/**
 * What a shop of a family is called beside the others.
 *
 * @param variant - the shop
 * @returns what is other in it, or 'as it is' for the first
 */
export function variantWords({ shop, isFirst }: ShopVariant): string {
  return isFirst || shop.variantOf === undefined ? 'as it is' : shop.variantOf.words;
}
