// One state of the gates in words: what is open, what it gives, and what is wrong, the gravest first.
// Numbers stand in the reader's units. A state that is fine is told in a few words.

import { formatQuantity } from '../units/format.ts';
import type { Quantity, UnitSystem } from '../units/quantity.ts';
import { difficultySentences } from './difficulty-sentence.ts';
import { listed } from './listed.ts';
import { besideLimit } from './near-limit.ts';
import type { Shop } from './schema/shop-schema.ts';
import { sectionLabel } from './section-label.ts';
import type { DropReport, StateReport } from './state-report.ts';
import { ownPipeWord } from './verdict-words.ts';

/** Up to this many open drops are named; of more only the number is told. */
const MOST_NAMED = 3;

/** What a sentence needs to know of the shop. */
export type ShopWords = Pick<Shop, 'sections' | 'drops' | 'carryingRange'>;

/**
 * A state of the gates in words.
 *
 * @param shop - the shop that was balanced
 * @param report - one state of its gates
 * @param system - the units to speak in
 * @returns a sentence, followed by one for each thing that is wrong
 */
export function sentence(shop: ShopWords, report: StateReport, system: UnitSystem): string {
  const point = report.operatingPoint;
  if (point === null) return difficultySentences(report).join(' ');
  const open = openDrops(shop, report);
  const faults = [
    ...settling(shop, open, system),
    ...shortOfAir(open, system),
    ...tight(shop, open, system),
    ...tightBeyond(shop, open, report, system),
  ];
  const doubts = difficultySentences(report);
  if (open.length === 0) {
    const leak = show('flow', system, point.flow);
    return [`Nothing open: ${leak} leaks in past the shut gates.`, ...doubts].join(' ');
  }
  const head = whatIsOpen(open, point.flow, system);
  if (faults.length > 0) return [`${head}.`, ...faults, ...doubts].join(' ');
  return [`${head}; carries everywhere.`, ...doubts].join(' ');
}

/** The open drops under their present names: a drop can be renamed without being solved anew. */
function openDrops(shop: ShopWords, report: StateReport): DropReport[] {
  return report.drops
    .filter(({ verdict }) => verdict !== 'shut')
    .map((drop) => ({
      ...drop,
      name: shop.drops.find(({ id }) => id === drop.id)?.name ?? drop.name,
    }));
}

function whatIsOpen(open: readonly DropReport[], total: number, system: UnitSystem): string {
  const [only] = open;
  if (open.length === 1 && only !== undefined) {
    const flow = show('flow', system, only.flow);
    return `${only.name} open: ${flow} at ${show('velocity', system, only.velocity)}`;
  }
  if (open.length > MOST_NAMED) {
    return `${open.length} drops open: ${show('flow', system, total)} in all`;
  }
  const names = listed(open.map(({ name }) => name));
  const flows = open.map(({ flow }) => formatQuantity('flow', system, flow).number);
  const last = show('flow', system, open.at(-1)?.flow ?? 0);
  return `${names} open: ${listed([...flows.slice(0, -1), last])}`;
}

/** The slowest section that open drops' air passes, and how many others settle too. */
function settling(shop: ShopWords, open: readonly DropReport[], system: UnitSystem): string[] {
  const slow = open.filter(({ verdict }) => verdict === 'settles');
  if (slow.length === 0) return [];
  const worst = slow.reduce((a, b) => (b.slowest.velocity < a.slowest.velocity ? b : a)).slowest;
  const section = shop.sections.find(({ id }) => id === worst.section);
  if (section === undefined) return [];
  const speed = besideLimit('velocity', system, worst.velocity, shop.carryingRange.low);
  const others = new Set(slow.map(({ slowest }) => slowest.section)).size - 1;
  const more = others === 0 ? '' : `, and in ${others} other ${others === 1 ? 'place' : 'places'}`;
  return [`${sectionLabel(section)} runs at ${speed}: chips will settle there${more}.`];
}

function shortOfAir(open: readonly DropReport[], system: UnitSystem): string[] {
  const short = open.filter(({ need, flow }) => need !== null && flow < need);
  if (short.length > MOST_NAMED) return [`${short.length} drops get less air than they need.`];
  return short.map(({ name, need }) => {
    const wanted = show('flow', system, need ?? 0);
    if (open.length === 1) return `That is short of the ${wanted} it needs.`;
    return `${name} is short of the ${wanted} it needs.`;
  });
}

function tight(shop: ShopWords, open: readonly DropReport[], system: UnitSystem): string[] {
  const fast = open.filter(({ velocity }) => velocity > shop.carryingRange.high);
  const limit = show('velocity', system, shop.carryingRange.high);
  if (fast.length > MOST_NAMED) return [`${fast.length} drops run tight, above ${limit}.`];
  return fast.map((drop) => {
    const what = ownPipeWord(shop, drop);
    if (open.length === 1)
      return `Its ${what} is tight: above ${limit} it throttles the collector.`;
    const speed = besideLimit('velocity', system, drop.velocity, shop.carryingRange.high);
    return `The ${what} of ${drop.name} is tight at ${speed}.`;
  });
}

/** The fastest section that is no open drop's own: a main that throttles the collector. */
function tightBeyond(
  shop: ShopWords,
  open: readonly DropReport[],
  report: StateReport,
  system: UnitSystem,
): string[] {
  const { high } = shop.carryingRange;
  const own = shop.drops.filter(({ id }) => open.some((drop) => drop.id === id));
  const fast = report.sections
    .filter(({ velocity }) => velocity > high)
    .filter(({ id }) => !own.some(({ into }) => into === id))
    .toSorted((a, b) => b.velocity - a.velocity);
  const [fastest] = fast;
  if (fastest === undefined) return [];
  const section = shop.sections.find(({ id }) => id === fastest.id) ?? { id: fastest.id };
  const speed = besideLimit('velocity', system, fastest.velocity, high);
  const others = fast.length - 1;
  const more =
    others === 0 ? '' : `, and ${others} other ${others === 1 ? 'place is' : 'places are'} tight`;
  return [`${sectionLabel(section)} is tight at ${speed}: it throttles the collector${more}.`];
}

function show(quantity: Quantity, system: UnitSystem, si: number): string {
  return formatQuantity(quantity, system, si).text;
}
