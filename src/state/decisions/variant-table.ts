// The shops of a family side by side: each drop alone, and what has to be bought.

import type { DropReport } from '../../shop/state-report.ts';
import { formatQuantity } from '../../units/format.ts';
import { unitLabel, type UnitSystem } from '../../units/quantity.ts';
import type { AnswerCell, AnswerColumn, AnswerRow } from './answer-rows.ts';
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
 * What has to be bought for each variant, and how many of its drops are served.
 *
 * @param family - the shops, the first one first
 * @param reports - each drop alone, shop by shop
 * @param system - the units to write in
 * @returns the table
 */
export function boughtTable(
  family: readonly ShopVariant[],
  reports: readonly (readonly DropReport[])[],
  system: UnitSystem,
): VariantTable {
  const first = family[0]!.shop;
  return {
    columns: [{ name: 'shop' }, { name: 'drops served, alone' }, { name: 'to be bought' }],
    rows: family.map((variant, at) => {
      const drops = reports[at] ?? [];
      const served = drops.filter(({ verdict }) => verdict === 'carries' || verdict === 'tight');
      return {
        key: variant.id,
        cells: [
          variantWords(variant),
          { text: `${served.length} of ${drops.length}`, by: served.length },
          variant.isFirst ? '' : boughtWords(first, variant.shop, system),
        ],
        ...(variant.isOpen ? { mark: 'open' } : {}),
      };
    }),
  };
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
