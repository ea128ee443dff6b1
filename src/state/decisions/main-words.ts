// What a main of another size does, in words: the size that serves most, and the number that keeps a
// larger one from being better.

import { gainWords } from '../../shop/decisions/main-sentence.ts';
import type { DropVerdict } from '../../shop/decisions/main-verdict.ts';
import type { MainRow, MainSizes } from '../../shop/decisions/main-sizes.ts';
import type { MainFigures } from '../../shop/decisions/main-state.ts';
import { isServed } from '../../shop/decisions/solved-states.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { sectionLabelInside } from '../../shop/section-label.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';

/** Names and units for the words of an answer. */
export interface MainSpeech {
  readonly shop: Shop;
  readonly system: UnitSystem;
}

/**
 * Drops that are served, each alone.
 *
 * @param figures - a main in every state
 * @param shop - the shop
 * @returns how many [-]
 */
export function servedAlone(figures: MainFigures, shop: Shop): number {
  // The states begin with each drop alone, in the order of the document.
  return shop.drops.filter(({ id }, i) => {
    const drop = figures.states[i]?.drops.find((each) => each.id === id);
    return drop !== undefined && isServed(drop);
  }).length;
}

/**
 * The mean gain of all drops alone.
 *
 * @param row - one size
 * @returns over today's air [-]
 */
export function meanGain({ drops }: MainRow): number {
  return drops.reduce((sum, { gain }) => sum + gain, 0) / Math.max(1, drops.length);
}

/**
 * The size that serves the most drops alone; of those alike, the one that gives the most air.
 *
 * @param rows - sizes to choose from
 * @param shop - the shop
 * @returns the row; undefined where there is none
 */
export function bestMain(rows: readonly MainRow[], shop: Shop): MainRow | undefined {
  return rows.toSorted(
    (a, b) => servedAlone(b, shop) - servedAlone(a, shop) || meanGain(b) - meanGain(a),
  )[0];
}

/**
 * The answer in words.
 *
 * @param sizes - the answer
 * @param rows - the sizes that are shown, by rising diameter
 * @param speech - names and units
 * @returns two sentences
 */
export function mainAnswerWords(
  sizes: MainSizes,
  rows: readonly MainRow[],
  speech: MainSpeech,
): string {
  const { shop } = speech;
  const best = bestMain(rows, shop);
  const count = shop.drops.length;
  const today = servedAlone(sizes.today, shop);
  if (best === undefined) return 'No section is counted as the main.';
  const served = servedAlone(best, shop);
  const isBetter = served > today || (served === today && meanGain(best) > 0.01 && !best.isToday);
  const first = isBetter
    ? `A main of ${best.size.name} serves ${served} of ${count} drops, each alone, with ${gainWords(meanGain(best))} on average; today’s serves ${today}.`
    : `No size does better than the main of today, which serves ${today} of ${count} drops, each alone.`;
  const next = rows.find(
    ({ size, drops }) =>
      size.diameter > (isBetter ? best.size.diameter : 0) && drops.some(isHeldBack),
  );
  const drop = next?.drops.find(isHeldBack);
  return next && drop ? `${first} ${heldBackSentence(next, drop, speech)}` : first;
}

/** More air, and yet chips settle. */
function isHeldBack({ kind, gain }: DropVerdict): boolean {
  return gain > 0 && (kind === 'hurts' || kind === 'second gate');
}

function heldBackSentence({ size }: MainRow, drop: DropVerdict, speech: MainSpeech): string {
  const { slowest } = drop.after;
  const where = sectionIn(speech, slowest.section);
  const low = formatQuantity('velocity', speech.system, speech.shop.carryingRange.low).text;
  const speed = formatQuantity('velocity', speech.system, slowest.velocity).text;
  const air = gainWords(drop.gain);
  const bleed = drop.bleeds[0];
  const unless =
    bleed === undefined
      ? 'and no second gate mends that'
      : `unless ${dropName(speech, bleed.drop)} is open as well`;
  return `At ${size.name} ${drop.name} gets ${air}, but alone it runs ${where} at ${speed}, below the ${low} that carries, ${unless}.`;
}

/** The name of a section in a sentence. */
export function sectionIn({ shop }: MainSpeech, id: string): string {
  return sectionLabelInside(shop.sections.find((section) => section.id === id) ?? { id });
}

function dropName({ shop }: MainSpeech, id: string): string {
  return shop.drops.find((drop) => drop.id === id)?.name ?? id;
}
