// What another main does, in words: how many drops gain, which ones it hurts, and which second gate
// keeps it clean.

import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { listed, namedOrCounted } from '../listed.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { verdictWords } from '../verdict-words.ts';
import type { MainRow } from './main-sizes.ts';
import type { DropVerdict } from './main-verdict.ts';

/** What of a shop these words use. */
export type MainWords = Pick<Shop, 'sections' | 'drops' | 'carryingRange'>;

/** Up to this many drops are named; of more only the number is told. */
const MOST_NAMED = 3;

/**
 * A size of the main in words.
 *
 * @param shop - the shop, for its names
 * @param row - what that size does
 * @returns such as 'A main of 8 in. helps Planer, hurts 2 drops, and helps Lathe only with Floor sweep
 *   open as well.'
 */
export function mainSentence(shop: MainWords, row: MainRow): string {
  const named = (kind: DropVerdict['kind']) =>
    row.drops.filter((drop) => drop.kind === kind).map(({ id, name }) => nameOf(shop, id, name));
  const deeds = [
    ...deed('helps', named('helps')),
    ...deed('hurts', named('hurts')),
    ...secondGates(shop, row.drops),
  ];
  if (row.isToday) return `A main of ${row.size.name} is what is there.`;
  if (deeds.length === 0) return `A main of ${row.size.name} changes little for any drop.`;
  return `A main of ${row.size.name} ${listed(deeds)}.`;
}

function deed(verb: string, names: readonly string[]): string[] {
  return names.length === 0 ? [] : [`${verb} ${namedOrCounted(names, MOST_NAMED, 'drops')}`];
}

function secondGates(shop: MainWords, drops: readonly DropVerdict[]): string[] {
  const needing = drops.filter(({ kind }) => kind === 'second gate');
  if (needing.length === 0) return [];
  if (needing.length > MOST_NAMED) {
    return [`helps ${needing.length} drops only with a second gate open`];
  }
  return needing.map(({ id, name, bleeds }) => {
    const second = bleeds.map(({ drop }) => nameOf(shop, drop, drop))[0] ?? '';
    return `helps ${nameOf(shop, id, name)} only with ${second} open as well`;
  });
}

/**
 * What another main does to one drop, with the numbers it turns on.
 *
 * @param shop - the shop, for its names and its carrying range
 * @param drop - the verdict on the drop
 * @param system - the units to speak in
 * @returns such as 'helps: 12 % more air, 480 cfm' or 'hurts: settles: 2,900 ft/min in the main'
 */
export function effectWords(shop: MainWords, drop: DropVerdict, system: UnitSystem): string {
  const air = `${gainWords(drop.gain)}, ${formatQuantity('flow', system, drop.after.flow).text}`;
  switch (drop.kind) {
    case 'helps':
      return `helps: ${air}`;
    case 'same':
      return `no change: ${air}`;
    case 'hurts':
      return drop.after.verdict === 'carries'
        ? `hurts: ${air}`
        : `hurts: ${verdictWords(shop, drop.after, system)}; ${air}`;
    case 'second gate': {
      const second = drop.bleeds.map((bleed) => nameOf(shop, bleed.drop, bleed.drop))[0] ?? '';
      const alone = verdictWords(shop, drop.after, system);
      const both = formatQuantity('flow', system, drop.bleeds[0]?.report.flow ?? 0).text;
      return `only with ${second} open too, then ${both}; alone it ${alone}`;
    }
  }
}

/**
 * A gain or loss in words.
 *
 * @param gain - change over what was [-]
 * @returns such as '12 % more air', 'as much air'
 */
export function gainWords(gain: number): string {
  const percent = Math.round(100 * Math.abs(gain));
  if (percent === 0) return 'as much air';
  return `${percent}\u2009% ${gain > 0 ? 'more' : 'less'} air`;
}

function nameOf(shop: MainWords, id: string, otherwise: string): string {
  return shop.drops.find((drop) => drop.id === id)?.name ?? otherwise;
}
