// How sure the verdicts on one size of the main are, in words.

import type { ToldMain } from './told-doubt.ts';
import type { MainRow } from '../../shop/decisions/main-sizes.ts';
import { casesWords } from '../../shop/decisions/doubt-words.ts';

/**
 * How sure one size is.
 *
 * @param row - the size
 * @param doubt - what its verdicts are in all cases
 * @returns a sentence
 */
export function mainDoubtWords(row: MainRow, { effects }: ToldMain): string {
  const byDoubt = effects.toSorted((a, b) => a.holds - b.holds);
  const [least, next] = byDoubt;
  if (least === undefined) return '';
  const name = (id: string) => row.drops.find((drop) => drop.id === id)?.name ?? id;
  const size = row.size.name;
  if (least.holds >= 1) {
    return `What a main of ${size} does to each drop stays the same in every case with everything a little off.`;
  }
  const others =
    next === undefined ? '' : `; for every other drop it holds ${atLeast(casesWords(next.holds))}`;
  return `With everything a little off, what a main of ${size} does to ${name(least.id)} holds ${casesWords(least.holds)}${others}.`;
}

function atLeast(words: string): string {
  return words.replace(/^in (\d)/, 'in at least $1');
}
