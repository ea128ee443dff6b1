// What a heading says of its column: whether it holds flows or pressures, and in what unit.

import { tidyText } from '../../units/tidy-text.ts';
import type { Unit } from '../../units/unit.ts';
import { unitOfSpelling } from '../../units/unit-spellings.ts';

/** What a column holds, as far as its heading or its cells say so. */
export type Holds = 'flow' | 'pressure' | 'other';

/** What is known of a column. */
export interface ColumnHint {
  readonly holds: Holds | undefined;
  readonly unit: Unit | undefined;
}

/** Words of headings, in a few languages that leaflets come in. */
const FLOW_WORDS = wordsOf(
  'flow|airflow|air flow|volume|volumenstrom|luftmenge|débit|caudal|portata|q',
);
const PRESSURE_WORDS = wordsOf(
  'pressure|suction|static|sp|vacuum|druck|unterdruck|pression|dépression|presión|pressione|p|dp|Δp',
);
const OTHER_WORDS = wordsOf(
  'power|efficiency|velocity|current|amps|speed|rpm|diameter|leistung|drehzahl|no|nr|point|setting',
);
/** Of these dimensions a unit says what a column holds; a length may be a pressure or a pipe. */
const TELLING = new Set(['flow', 'pressure', 'velocity', 'power', 'rotation', 'density']);

/**
 * What a heading says.
 *
 * @param heading - the text over a column
 * @returns what the column holds, and the unit if it names one of flow or pressure
 */
export function columnHint(heading: string): ColumnHint {
  const text = tidyText(heading);
  const unit = unitWithin(text);
  if (unit) {
    const holds =
      unit.dimension === 'flow' || unit.dimension === 'pressure' ? unit.dimension : 'other';
    return { holds, unit: holds === 'other' ? undefined : unit };
  }
  if (OTHER_WORDS.test(text)) return { holds: 'other', unit: undefined };
  if (FLOW_WORDS.test(text)) return { holds: 'flow', unit: undefined };
  if (PRESSURE_WORDS.test(text)) return { holds: 'pressure', unit: undefined };
  return { holds: undefined, unit: undefined };
}

/**
 * What a line says that is no row of headings, such as “flow in m³/h, pressure in Pa”.
 *
 * @param line - a line of text without points in it
 * @returns hints in the order of the line; more than one of a kind says nothing
 */
export function lineHints(line: string): readonly ColumnHint[] {
  const words = tidyText(line).split(/[\s,;:|]+/);
  const found: { readonly at: number; readonly hint: ColumnHint }[] = [];
  for (const holds of ['flow', 'pressure'] as const) {
    const unit = firstUnit(words, holds);
    const pattern = holds === 'flow' ? FLOW_WORDS : PRESSURE_WORDS;
    const at = words.findIndex((word) => pattern.test(word));
    if (unit) found.push({ at: unit.at, hint: { holds, unit: unit.unit } });
    else if (at >= 0) found.push({ at, hint: { holds, unit: undefined } });
  }
  return found.toSorted((a, b) => a.at - b.at).map(({ hint }) => hint);
}

/**
 * The unit that a text behind a number names.
 *
 * @param text - tidied text, not empty
 * @returns a unit, of flow or pressure rather than another; undefined where none is known
 */
export function unitBehind(text: string): Unit | undefined {
  const bare = text.replace(/^[([]|[)\].,;]+$/g, '').trim();
  if (bare === '') return undefined;
  const flow = unitOfSpelling(bare, 'flow');
  return flow?.dimension === 'flow' ? flow : unitOfSpelling(bare, 'pressure');
}

/** In brackets, or at the end; inches and millimetres count only where pressure is spoken of. */
function unitWithin(text: string): Unit | undefined {
  const bracketed = /[([]([^)\]]+)[)\]]\s*$/.exec(text)?.[1];
  const words = text.split(' ');
  const ends = words.map((_, i) =>
    words
      .slice(i)
      .join(' ')
      .replace(/^(?:\/|in(?= )|,)\s*/, ''),
  );
  const tried = [
    ...(bracketed === undefined ? [] : [bracketed]),
    ...words.map((_, i) => words.slice(i).join(' ')),
    ...ends,
  ];
  for (const each of tried) {
    const unit = unitBehind(each.replace(/^[/,:]\s*/, ''));
    if (!unit || !TELLING.has(unit.dimension)) continue;
    const isLength = isLengthSpelling(each);
    if (!isLength || each === text || PRESSURE_WORDS.test(text)) return unit;
  }
  return undefined;
}

function firstUnit(
  words: readonly string[],
  holds: 'flow' | 'pressure',
): { readonly at: number; readonly unit: Unit } | undefined {
  for (let at = 0; at < words.length; at++) {
    for (let count = 4; count >= 1; count--) {
      const text = words
        .slice(at, at + count)
        .join(' ')
        .replace(/[()[\]]/g, ' ')
        .trim();
      const unit = text === '' || isLengthSpelling(text) ? undefined : unitBehind(text);
      if (unit?.dimension === holds) return { at, unit };
    }
  }
  return undefined;
}

/** Inches and millimetres are lengths as well. */
function isLengthSpelling(text: string): boolean {
  return unitOfSpelling(text, 'length')?.dimension === 'length';
}

function wordsOf(words: string): RegExp {
  return new RegExp(`(?<![\\p{L}\\d])(?:${words})(?![\\p{L}\\d])`, 'iu');
}
