// The cut list as it is read: what to buy, group by group, in the reader's units and words, how the
// pipe is cut, and what it comes to.

import { costOf } from '../../shop/cut-list/cost.ts';
import { type CutList, cutList } from '../../shop/cut-list/cut-list.ts';
import type { HoseLine, PipeLine } from '../../shop/cut-list/stock-lines.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { formatQuantity } from '../../units/format.ts';
import { type UnitSystem, fromDisplay } from '../../units/quantity.ts';
import { type CutPlan, cutPlans } from './cut-plan.ts';
import { moneyNumber, moneyText } from './money.ts';
import { changeWords, fittingWords, gateWords, wyeWords } from './part-words.ts';
import { familyWords, pipeWords } from './stock-words.ts';

/** In which length pipe is bought where nobody says: 10 ft, or 3 m (common practice) [m]. */
export const USUAL_STOCK: Readonly<Record<UnitSystem, number>> = { us: 3.048, metric: 3 };

/** An item to buy. */
export interface ItemRow {
  readonly key: string;
  readonly what: string;
  readonly amount: string;
  /** What its price is for, such as 'each'. */
  readonly per: string;
  /** How many of the document's unit the price is for: a foot of hose is 0.3048 of a metre [-] */
  readonly perUnit: number;
  /** Price as it is typed, for what `per` says; undefined where there is none. */
  readonly price: number | undefined;
  readonly priceText: string;
  /** Of all of it [of the currency] */
  readonly sum: number | undefined;
  readonly cost: string;
}

/** Items of one kind. */
export interface ItemGroup {
  readonly heading: string;
  readonly rows: readonly ItemRow[];
}

/** A kind of pipe whose length of stock can be chosen. */
export interface StockChoice {
  readonly family: string;
  readonly name: string;
  /** As chosen; undefined for the usual one [m] */
  readonly chosen: number | undefined;
}

/** All of the cut list. */
export interface CutListView {
  readonly groups: readonly ItemGroup[];
  readonly stocks: readonly StockChoice[];
  readonly plans: readonly CutPlan[];
  readonly currency: string | undefined;
  /** What the priced items come to; undefined where no item has a price. */
  readonly total: string | undefined;
  /** The same as a number [of the currency] */
  readonly totalSum: number;
  /** Items without a price [-] */
  readonly unpriced: number;
}

/** A line before it has a price. */
interface Item {
  readonly key: string;
  readonly what: string;
  readonly amount: string;
  readonly per: string;
  readonly perUnit: number;
}

/**
 * The cut list of a shop.
 *
 * @param shop - a shop in order
 * @param system - the units to speak in
 * @returns what to show; groups without an item are left out
 */
export function cutListView(shop: Shop, system: UnitSystem): CutListView {
  const list = cutList(shop, USUAL_STOCK[system]);
  const cost = costOf(list, shop.purchase);
  const priced = (item: Item): ItemRow => {
    const found = cost.items.get(item.key);
    const price = found && found.price * item.perUnit;
    return {
      ...item,
      price,
      priceText: price === undefined ? '' : moneyNumber(price, system),
      sum: found?.cost,
      cost: found ? moneyNumber(found.cost, system) : '',
    };
  };
  const currency = shop.purchase?.currency;
  return {
    groups: groupsOf(list, system).map(({ heading, items }) => ({
      heading,
      rows: items.map(priced),
    })),
    stocks: stockChoices(list, shop, system),
    plans: cutPlans(shop, list, system),
    currency,
    total: cost.items.size === 0 ? undefined : moneyText(cost.total, currency, system),
    totalSum: cost.total,
    unpriced: cost.unpriced,
  };
}

function groupsOf(list: CutList, system: UnitSystem): { heading: string; items: Item[] }[] {
  const each = ({ key, amount }: { key: string; amount: number }, what: string): Item => ({
    key,
    what,
    amount: String(amount),
    per: 'each',
    perUnit: 1,
  });
  const groups = [
    { heading: 'Pipe', items: list.pipes.map((line) => pipeItem(line, system)) },
    { heading: 'Hose', items: list.hoses.map((line) => hoseItem(line, system)) },
    {
      heading: 'Bends and other fittings',
      items: list.fittings.map((line) => each(line, fittingWords(line, system))),
    },
    { heading: 'Wyes', items: list.wyes.map((line) => each(line, wyeWords(line, system))) },
    { heading: 'Gates', items: list.gates.map((line) => each(line, gateWords(line, system))) },
    {
      heading: 'Reducers and connectors',
      items: list.changes.map((line) => each(line, changeWords(line, system))),
    },
  ];
  return groups.filter(({ items }) => items.length > 0);
}

function pipeItem(line: PipeLine, system: UnitSystem): Item {
  const { key, pipe, amount, pieces } = line;
  const show = (length: number) => formatQuantity('length', system, length).text;
  const lengths = amount === 1 ? 'length' : 'lengths';
  const cut = pieces.length === 1 ? 'in one piece' : `in ${pieces.length} pieces`;
  return {
    key,
    what: pipeWords(pipe, system),
    amount: `${amount} ${lengths} of ${show(line.stockLength)} (${show(line.length)} ${cut})`,
    per: 'a length',
    perUnit: 1,
  };
}

function hoseItem({ key, pipe, amount, lying }: HoseLine, system: UnitSystem): Item {
  const show = (length: number) => formatQuantity('length', system, length).text;
  const asItLies =
    show(lying) === show(amount) ? '' : ` (${show(lying)} as it lies, pushed together)`;
  return {
    key,
    what: pipeWords(pipe, system),
    amount: `${show(amount)}${asItLies}`,
    per: system === 'us' ? 'a foot' : 'a metre',
    perUnit: fromDisplay('length', system, 1),
  };
}

function stockChoices(list: CutList, shop: Shop, system: UnitSystem): StockChoice[] {
  const chosen = shop.purchase?.stockLengths ?? [];
  const families = new Map(list.pipes.map(({ pipe }) => [pipe.family, pipe]));
  return [...families.values()].map((pipe) => ({
    family: pipe.family,
    name: familyWords(pipe, system),
    chosen: chosen.find(({ family }) => family === pipe.family)?.length,
  }));
}
