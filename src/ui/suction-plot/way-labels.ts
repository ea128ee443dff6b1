// The names of the parts on a way, broken into lines that fit beside the plot, and how wide the
// columns around it are.

import { textSize } from '../operating-plot/text-size.ts';

/** Size of the text in the plot [px]. */
const LABEL_SIZE = 13;
const LINE = 17;
/** A row is so much higher than its lines [px]. */
const ROOM = 9;
const MOST_LINES = 3;

/** Columns beside the plot [px]. */
export interface WayColumns {
  /** Room for the names on the left. */
  readonly names: number;
  /** Room for the losses and for their shares on the right; 0 where there is none for losses. */
  readonly losses: number;
  readonly shares: number;
}

/**
 * Columns for a drawing of some width.
 *
 * @param width - of the drawing [px]
 * @returns columns; the figures of the losses are left out where there is little room
 */
export function wayColumns(width: number): WayColumns {
  if (width < 520) return { names: Math.round(0.42 * width), losses: 0, shares: 48 };
  return { names: Math.min(280, Math.round(0.38 * width)), losses: 64, shares: 56 };
}

/**
 * Breaks a name into lines at its spaces.
 *
 * @param words - the name
 * @param width - room for a line [px]
 * @returns one to three lines; what doesn't fit goes on in the last
 */
export function brokenLines(words: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of words.split(' ')) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`;
    const fits = textSize(longer, LABEL_SIZE).width <= width;
    if (lines.length > 0 && (fits || lines.length === MOST_LINES)) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/**
 * How high a row has to be.
 *
 * @param lines - of its name
 * @returns its height [px]
 */
export function rowHeight(lines: readonly string[]): number {
  return Math.max(1, lines.length) * LINE + ROOM;
}

/**
 * Where a line of a name stands.
 *
 * @param lines - how many there are [-]
 * @param line - which one, from 0 [-]
 * @param middle - of the row [px]
 * @returns its middle [px]
 */
export function lineMiddle(lines: number, line: number, middle: number): number {
  return middle + (line - (lines - 1) / 2) * LINE;
}
