// What was understood of a pasted text, said back.

import type { ColumnPair } from './choose-columns.ts';
import type { PastedTable } from './pasted-table.ts';

/** What there is to say. */
export interface UnderstoodFacts {
  readonly count: number;
  /** Labels of the units. */
  readonly flow: string;
  readonly pressure: string;
  /** Of these, those that nothing named but that alone would fit. */
  readonly guessed?: readonly string[];
  readonly table?: PastedTable;
  readonly pair?: ColumnPair;
  /** Lines that had no number in one of the two columns. */
  readonly halfFilled?: number;
  /** Whether suction had been written as negative numbers. */
  readonly isTurned: boolean;
}

/** Longest part of a line that is quoted, in characters. */
const LONGEST_QUOTE = 30;

/**
 * Says back what was understood.
 *
 * @param facts - of the reading
 * @returns such as '5 points: flow in cfm, pressure in in. w.g.'
 */
export function understoodWords(facts: UnderstoodFacts): string {
  const { count, flow, pressure, guessed = [], table, pair, halfFilled = 0, isTurned } = facts;
  const from = (at: number | undefined) =>
    table && at !== undefined && table.columns.length > 2 ? ` from ${columnName(table, at)}` : '';
  const parts = [
    `${count} points: flow in ${flow}${from(pair?.flow)}, pressure in ${pressure}${from(pair?.pressure)}`,
    ...(pair && pair.flow > pair.pressure
      ? ['the flow stood in the column after the pressure']
      : []),
    ...guessed.map((label) => `${label} was not written, but nothing else would fit`),
    ...(table?.mark === 'comma' ? ['commas taken as decimal marks'] : []),
    ...(isTurned ? ['negative pressures taken as suction'] : []),
    ...(halfFilled > 0 ? [`${lines(halfFilled)} half empty and left out`] : []),
    ...passedOver(table?.passedOver ?? []),
  ];
  return `${parts.join('; ')}.`.replace(/\.\.$/, '.');
}

/**
 * A column as one speaks of it.
 *
 * @param table - the pasted table
 * @param at - place of the column, counted from 0
 * @returns its heading in quotation marks, or its number
 */
export function columnName({ columns }: PastedTable, at: number): string {
  const heading = columns[at]?.heading ?? '';
  return heading === '' ? `column ${at + 1}` : `“${shortened(heading)}”`;
}

/**
 * A number as it was understood: with a point for decimals, without marks between thousands.
 *
 * @param value - the number
 * @returns the digits
 */
export function numberText(value: number): string {
  return String(Number(value.toPrecision(12)));
}

function passedOver(texts: readonly string[]): readonly string[] {
  const [first] = texts;
  if (first === undefined) return [];
  return [
    `${lines(texts.length)} passed over: “${shortened(first)}”${texts.length > 1 ? ' and so on' : ''}`,
  ];
}

function lines(count: number): string {
  return count === 1 ? '1 line' : `${count} lines`;
}

function shortened(text: string): string {
  return text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE)}…` : text;
}
