// Reading values off the lines of a plot: which stops a line has, which one is nearest to a pointer,
// and where a step along a line or over to the next one leads.

import type { Box, Place } from './frame.ts';
import type { Obstacles } from './obstacles.ts';

/** What is read at one stop of a line. */
export interface Reading {
  /** Values with their units, one a row; written beside the mark and spoken. */
  readonly figures: readonly string[];
  /** What has to be known of them, such as that the line is only continued there. */
  readonly remark?: string | undefined;
}

/** A line that can be read: places along it in order, with what is read at each. */
export interface ReadLine {
  readonly name: string;
  /** At least one [px]. */
  readonly places: readonly Place[];
  /** Called only for the stop that is being read, so it may format. */
  readonly read: (stop: number) => Reading;
}

/** A stop on a line, both counted from 0. */
export interface ReadPosition {
  readonly line: number;
  readonly stop: number;
}

/** Everything that a reader needs of a plot. */
export interface Readable {
  readonly lines: readonly ReadLine[];
  /** Where the reading may be written [px]. */
  readonly page: Box;
  /** What the reading must not cover. */
  readonly obstacles: Obstacles;
  /** Where reading by keyboard begins; at the start of the first line if not said. */
  readonly start?: ReadPosition | undefined;
}

/**
 * The stop nearest to a place.
 *
 * @param lines - what can be read
 * @param place - where the pointer is [px]
 * @returns the stop, or undefined where there is none
 */
export function nearestStop(lines: readonly ReadLine[], place: Place): ReadPosition | undefined {
  let best: ReadPosition | undefined;
  let least = Number.POSITIVE_INFINITY;
  lines.forEach(({ places }, line) => {
    places.forEach(({ x, y }, stop) => {
      const away = Math.hypot(x - place.x, y - place.y);
      if (away < least) {
        least = away;
        best = { line, stop };
      }
    });
  });
  return best;
}

/**
 * The position as it holds on these lines, which may have become fewer or shorter.
 *
 * @param lines - what can be read now
 * @param at - where the reader was
 * @returns the nearest position there is, or undefined where there is nothing to read
 */
export function keptStop(lines: readonly ReadLine[], at: ReadPosition): ReadPosition | undefined {
  const line = Math.min(at.line, lines.length - 1);
  const count = lines[line]?.places.length ?? 0;
  return count === 0 ? undefined : { line, stop: Math.max(0, Math.min(at.stop, count - 1)) };
}

/**
 * A step along the line; it ends at the line's ends.
 *
 * @param lines - what can be read
 * @param at - where the reader is
 * @param by - how many stops onward, back if below 0; may be infinite [-]
 * @returns where the step leads
 */
export function stepAlong(
  lines: readonly ReadLine[],
  at: ReadPosition,
  by: number,
): ReadPosition | undefined {
  return keptStop(lines, { line: at.line, stop: at.stop + by });
}

/**
 * A step over to another line, to the stop that lies nearest above or below.
 *
 * @param lines - what can be read
 * @param at - where the reader is
 * @param by - how many lines onward, back if below 0 [-]
 * @returns where the step leads; the same position where there is no such line
 */
export function stepAcross(
  lines: readonly ReadLine[],
  at: ReadPosition,
  by: number,
): ReadPosition | undefined {
  const line = at.line + by;
  const from = lines[at.line]?.places[at.stop];
  const places = lines[line]?.places;
  if (!from || !places || places.length === 0) return keptStop(lines, at);
  let stop = 0;
  places.forEach(({ x }, i) => {
    if (Math.abs(x - from.x) < Math.abs(places[stop]!.x - from.x)) stop = i;
  });
  return { line, stop };
}

/**
 * A reading in one sentence, as it is spoken.
 *
 * @param line - what is read along
 * @param stop - where on it, counted from 0 [-]
 * @returns name, figures and remark
 */
export function spokenReading({ name, read }: ReadLine, stop: number): string {
  const { figures, remark } = read(stop);
  return `${name}: ${[...figures, ...(remark === undefined ? [] : [remark])].join(', ')}`;
}
