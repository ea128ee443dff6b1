// Collectors side by side, in words: which serves the most drops, what each drop costs, and how their
// curves were brought to one footing.

import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { listed } from '../listed.ts';
import type { CollectorRow } from './collectors.ts';
import type { FootingNote } from './collector-footing.ts';

/**
 * The comparison in words.
 *
 * @param rows - the collectors
 * @param drops - how many drops there are [-]
 * @returns which serves the most, and which of these costs the least where all have prices
 */
export function collectorSentence(rows: readonly CollectorRow[], drops: number): string {
  const most = Math.max(0, ...rows.map(({ served }) => served));
  if (most === 0) return 'None of these collectors serves any drop alone.';
  const best = rows.filter(({ served }) => served === most);
  const whole = most === drops ? `all ${drops} drops` : `${most} of ${drops} drops`;
  const verb = best.length === 1 ? 'serves' : 'serve';
  const head = `${namesOf(best)} ${verb} ${whole}, each alone`;
  const rest = rows.length === best.length ? '' : '; the others serve fewer';
  return [`${head}${rest}.`, ...priceSentence(best)].join(' ');
}

/** Of several names that hold commas each stands in quotation marks. */
function namesOf(rows: readonly CollectorRow[]): string {
  const names = rows.map(({ name }) => name);
  const isPlain = names.length < 2 || !names.some((name) => name.includes(','));
  return listed(isPlain ? names : names.map((name) => `“${name}”`));
}

/** Prices are only compared in one currency. */
function priceSentence(best: readonly CollectorRow[]): string[] {
  const priced = best.flatMap(({ name, pricePerDrop: price }) =>
    price === undefined ? [] : [{ name, ...price }],
  );
  const cheapest = priced.toSorted((a, b) => a.amount - b.amount)[0];
  if (cheapest === undefined || priced.some(({ currency }) => currency !== cheapest.currency)) {
    return [];
  }
  const price = `${Math.round(cheapest.amount)} ${cheapest.currency}`;
  if (best.length === 1) return [`That is ${price} for each drop served.`];
  return [`Of these ${cheapest.name} costs the least for each drop served: ${price}.`];
}

/**
 * One step of the way to a common footing in words.
 *
 * @param note - what was done, or had to be left
 * @param system - the units to speak in
 * @returns a sentence
 */
export function footingWords(note: FootingNote, system: UnitSystem): string {
  switch (note.kind) {
    case 'tap': {
      const bore = formatQuantity('diameter', system, note.diameter).text;
      return `Read at a tap in a ${bore} pipe: the velocity pressure there is taken off.`;
    }
    case 'density': {
      const from = formatQuantity('density', system, note.from).text;
      const to = formatQuantity('density', system, note.to).text;
      return `Carried from air of ${from} to the ${to} of this shop.`;
    }
    case 'speed':
      return `Carried to ${percent(note.ratio)} of the speed of its points.`;
    case 'wheel':
      return `Carried to a wheel of ${percent(note.ratio)} of that of its points.`;
    case 'parallel':
      return `${note.count} of them side by side.`;
    case 'series':
      return `${note.count} of them one behind the other.`;
    case 'filter in the points':
      return note.blinding === 1
        ? 'Its points hold the clean filter.'
        : `Its points hold the clean filter; taken as ${note.blinding} times as tight now.`;
    case 'unknown filter in the points':
      return 'Its points hold a filter of which nothing is entered: it stays as clean as it was.';
    case 'filter taken off':
      return 'Its points hold no filter: that of the shop is taken off.';
    case 'no filter counted':
      return 'Its points hold no filter and none is entered: with one it gives less than told here.';
    case 'separator in the points':
      return 'Its points hold the separator.';
    case 'separator taken off':
      return 'Its points hold no separator: that of the shop is taken off.';
    case 'no separator counted':
      return 'Neither its points nor the shop hold a separator: with one it gives less.';
    default:
      return note satisfies never;
  }
}

function percent(ratio: number): string {
  return `${Math.round(1000 * ratio) / 10}\u2009%`;
}
