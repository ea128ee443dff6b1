// How each kind of pipe is cut, length by length of its stock; lengths that are cut alike stand together.

import type { CutList } from '../../shop/cut-list/cut-list.ts';
import type { StockUse } from '../../shop/cut-list/pack-stock.ts';
import type { PipeLine } from '../../shop/cut-list/stock-lines.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { pipeWords } from './stock-words.ts';

/** How a length of stock is cut, in words. */
export interface CutRow {
  /** How many lengths are cut so. */
  readonly times: string;
  /** Each piece with the section that it is for. */
  readonly cuts: readonly { readonly length: string; readonly section: string }[];
  readonly left: string;
}

/** How one kind of pipe is cut. */
export interface CutPlan {
  readonly heading: string;
  readonly rows: readonly CutRow[];
}

/** Shorter leavings are not worth a number [m]. */
const NOTHING_LEFT = 0.001;

/**
 * The cutting plans of a cut list.
 *
 * @param shop - for the names of sections
 * @param list - the cut list
 * @param system - the units to speak in
 * @returns one for each kind and size of pipe
 */
export function cutPlans(
  shop: Pick<Shop, 'sections'>,
  list: CutList,
  system: UnitSystem,
): CutPlan[] {
  const names = new Map(shop.sections.map(({ id, name }) => [id, name ?? id]));
  return list.pipes.map((line) => ({
    heading: headingOf(line, system),
    rows: line.stocks.map((use) => rowOf(use, names, system)),
  }));
}

function headingOf({ pipe, amount, stockLength }: PipeLine, system: UnitSystem): string {
  const stock = formatQuantity('length', system, stockLength).text;
  return `${pipeWords(pipe, system)}: ${amount} × ${stock}`;
}

function rowOf(
  { cuts, left, times }: StockUse,
  names: ReadonlyMap<string, string>,
  system: UnitSystem,
): CutRow {
  const show = (length: number) => formatQuantity('length', system, length).text;
  return {
    times: String(times),
    cuts: cuts.map(({ section, length }) => ({
      length: show(length),
      section: names.get(section) ?? section,
    })),
    left: left < NOTHING_LEFT ? 'nothing' : show(left),
  };
}
