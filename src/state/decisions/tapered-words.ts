// A main whose sections may differ, in words and as a table beside the best one of one size.

import type { ScoredMain, TaperedMain } from '../../shop/decisions/tapered-main.ts';
import { formatQuantity } from '../../units/format.ts';
import { unitLabel } from '../../units/quantity.ts';
import type { AnswerRow } from './answer-rows.ts';
import { sectionIn, type MainSpeech } from './main-words.ts';
import { sizeName } from './pipe-words.ts';
import type { AnswerRows } from './reach-tables.ts';

/**
 * The best main that widens toward the collector, and the best of one size.
 *
 * @param tapered - what the search found
 * @param family - id of the family of pipe
 * @param speech - names and units
 * @returns the table; each row can be taken over
 */
export function taperedTable(tapered: TaperedMain, family: string, speech: MainSpeech): AnswerRows {
  const row = (key: string, name: string, main: ScoredMain): AnswerRow => ({
    key,
    cells: [
      name,
      { text: `${main.score.served} of ${main.score.asked}`, by: main.score.served },
      { text: `${Math.round(100 * main.score.room)}\u2009%`, by: main.score.room },
      { text: formatQuantity('area', speech.system, main.score.wall).number, by: main.score.wall },
      sizesInWords(tapered.sections, main, family, speech),
    ],
    take: name,
  });
  return {
    columns: [
      { name: 'main' },
      { name: 'served, in all states', unit: 'open drops' },
      { name: 'least that any has', unit: 'of its limit' },
      { name: 'sheet', unit: unitLabel('area', speech.system) },
      { name: 'sizes, from the collector outwards' },
    ],
    rows: [
      row('tapered', 'main of several sizes', tapered.best),
      row('uniform', 'main of one size', tapered.bestUniform),
    ],
  };
}

/**
 * How the search went, and how sure its best is.
 *
 * @param tapered - what the search found
 * @returns sentences
 */
export function taperedSentence({ search, tried, sizes }: TaperedMain): string {
  const row = sizes.length > 1 ? `In sizes from ${sizes[0]} to ${sizes.at(-1)}` : `In ${sizes[0]}`;
  return search === 'every one'
    ? `${row} this is the best there is: all mains that nowhere narrow toward the collector were tried, ${tried} of them, but for those too wide at the collector to serve any drop.`
    : `${row} this is the best found, not proven to be the best there is: there are too many mains to try them all. ${tried} were tried, going from the best one of one size section by section.`;
}

/** Neighbouring sections of one size are told together. */
function sizesInWords(
  sections: readonly string[],
  { sizes }: ScoredMain,
  family: string,
  speech: MainSpeech,
): string {
  const groups: { size: string; to: string }[] = [];
  sections.forEach((section, i) => {
    const last = groups.at(-1);
    const size = sizes[i]!;
    if (last?.size === size) last.to = section;
    else groups.push({ size, to: section });
  });
  if (groups.length === 1) return `${sizeName(family, groups[0]!.size)} throughout`;
  return groups
    .map(({ size, to }, i) => {
      const name = sizeName(family, size);
      return i === groups.length - 1
        ? `${name} from there on`
        : `${name} up to and with ${sectionIn(speech, to)}`;
    })
    .join(', ');
}
