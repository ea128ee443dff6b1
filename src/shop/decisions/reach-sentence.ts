// How far a drop can reach, in words: the length, and what gives out there.

import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { ShopWords } from '../sentence.ts';
import { sectionLabelInside } from '../section-label.ts';
import { runDropId } from './choice.ts';
import type { Reach, ReachLimit } from './reach.ts';

/** Lengths are told to an inch or a centimetre [m] */
const LENGTH_STEP: Readonly<Record<UnitSystem, number>> = { us: 0.0254, metric: 0.01 };

/**
 * A reach in words.
 *
 * @param shop - the shop with the run in it, at any length: its names are used
 * @param reach - the reach
 * @param system - the units to speak in
 * @returns a sentence, and another where the curve or the drop turns doubtful before its end
 */
export function reachSentence(shop: ShopWords, reach: Reach, system: UnitSystem): string {
  const id = runDropId(reach.run.target);
  const name = shop.drops.find((drop) => drop.id === id)?.name ?? id;
  return [headOf(shop, reach, name, system), ...doubtsOf(reach, system)].join(' ');
}

function headOf(shop: ShopWords, reach: Reach, name: string, system: UnitSystem): string {
  const { end, longest } = reach;
  const low = formatQuantity('velocity', system, shop.carryingRange.low).text;
  const need = formatQuantity('flow', system, reach.need ?? 0).text;
  switch (end.kind) {
    case 'not within':
      return `${name} can reach ${lengthText(system, longest)} further and more: nothing gives out.`;
    case 'from the start':
      if (end.fault === 'need') {
        return `${name} can reach no further: it is short of the ${need} it needs as it is.`;
      }
      if (end.fault === 'settles') {
        const place = placeOf(shop, end.section);
        return `${name} can reach no further: ${place} runs below ${low} as it is, and chips settle.`;
      }
      return `${name} can reach no further: the collector gives no steady flow.`;
    case 'limit': {
      const length = lengthText(system, end.limit.length);
      const then =
        end.limit.kind === 'need'
          ? `then it gets less than the ${need} it needs`
          : `then ${placeOf(shop, end.limit.section)} falls below ${low}, and chips settle`;
      const leap = end.limit.leaps ? ', for the collector drops to another operating point' : '';
      return `${name} can reach ${length} further; ${then}${leap}.`;
    }
  }
}

/** Where the answer is less than sure, or comes back after its end. */
function doubtsOf({ limits, length, end }: Reach, system: UnitSystem): string[] {
  const sentences: string[] = [];
  const begun = limits.filter((limit) => limit.effect === 'begins' && limit.length <= length);
  for (const { kind, length: from } of begun) {
    const text = curveWords(kind);
    if (text !== undefined) sentences.push(`From ${lengthText(system, from)} on ${text}.`);
  }
  if (end.kind !== 'limit') return sentences;
  const { kind, section } = end.limit;
  const back = limits.find(
    (limit) =>
      limit.effect === 'ends' &&
      limit.length > length &&
      limit.kind === kind &&
      limit.section === section,
  );
  if (back !== undefined) {
    sentences.push(`It comes right again at ${lengthText(system, back.length)}.`);
  }
  return sentences;
}

function curveWords(kind: ReachLimit['kind']): string | undefined {
  switch (kind) {
    case 'left of the peak':
      return 'the collector runs left of the peak of its curve, where the flow may pulse';
    case 'below the points':
      return 'the operating point lies before the first entered point: it is extrapolated';
    case 'above the points':
      return 'the operating point lies beyond the last entered point: it is extrapolated';
    case 'need':
    case 'settles':
    case 'tight':
      return undefined;
  }
}

function placeOf(shop: ShopWords, id: string | undefined): string {
  return sectionLabelInside(shop.sections.find((each) => each.id === id) ?? { id: id ?? '' });
}

/** Rounded down, so that what is promised is within reach. */
function lengthText(system: UnitSystem, length: number): string {
  const whole = Math.floor(length / LENGTH_STEP[system] + 1e-6);
  return formatQuantity('length', system, whole * LENGTH_STEP[system]).text;
}
