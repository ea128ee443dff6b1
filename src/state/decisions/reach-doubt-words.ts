// How sure a reach is, in words.

import { casesWords } from '../../shop/decisions/doubt-words.ts';
import type { ReachDoubt } from '../../shop/decisions/reach-doubt.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { workedOutLength } from './pipe-words.ts';

/**
 * How sure a reach is.
 *
 * @param doubt - what came of all cases
 * @param wanted - the length that is wanted [m]
 * @param longest - the greatest length that was looked at [m]
 * @param system - the units to speak in
 * @returns one or two sentences
 */
export function reachDoubtWords(
  { length, points }: ReachDoubt,
  wanted: number,
  longest: number,
  system: UnitSystem,
): string {
  const text = (metres: number) => workedOutLength(metres, system);
  const reach =
    length.low >= longest
      ? `it reaches more than ${text(longest)} in nearly every case`
      : length.high <= 0
        ? 'it reaches no further in nearly every case'
        : `in 9 of 10 cases it reaches between ${text(length.low)} and ${
            length.high >= longest ? `more than ${text(longest)}` : text(length.high)
          }`;
  // The next length that was looked at, so that it is rather said too little.
  const at = points.find((point) => point.length >= wanted - 1e-9) ?? points.at(-1);
  const served = at === undefined ? '' : casesWords(at.served);
  const there = formatQuantity('length', system, wanted).text;
  const head = `With everything a little off, ${reach}.`;
  if (at === undefined) return head;
  const then = `${served.charAt(0).toUpperCase()}${served.slice(1)} it carries and has its need at the ${there} wanted.`;
  return `${head} ${then}`;
}
