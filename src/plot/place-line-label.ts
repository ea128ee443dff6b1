// Finds a place for a line's own label: beside the line, as near as it goes without touching it.

import type { Box, Place } from './frame.ts';
import type { Obstacles, Stroke } from './obstacles.ts';
import { type LabelSize, type LabelSpot, placeLabel } from './place-label.ts';

/** Where along its line a label stands, and on which side. Kept, it saves the search and the eye. */
export interface LineSpot {
  /** 0 the line's start to 1 its end [-] */
  readonly part: number;
  readonly spot: LabelSpot;
}

/** A line's label that found its place. */
export interface PlacedLineLabel {
  readonly box: Box;
  readonly at: LineSpot;
}

/** What is tried, where it isn't the usual. */
export interface LineSearch {
  /** Where the label stood before; kept if it is still free. */
  readonly last?: LineSpot | undefined;
  /** Distances from the line, nearest first [px] */
  readonly near?: readonly number[];
}

/**
 * Tries the given parts of a line in turn.
 *
 * @param strokes - the line, end to end [px]
 * @param parts - where along it to try, 0 its start to 1 its end, best first [-]
 * @param size - of the label [px]
 * @param page - the label stays inside it [px]
 * @param obstacles - what it must not cover, the line itself among it
 * @param search - what is tried first; distances of 8, 12 and 18 px if not said
 * @returns where the label stands [px], or undefined where nothing is free
 */
export function placeLineLabel(
  strokes: readonly Stroke[],
  parts: readonly number[],
  size: LabelSize,
  page: Box,
  obstacles: Obstacles,
  { last, near = [8, 12, 18] }: LineSearch = {},
): PlacedLineLabel | undefined {
  for (const part of last ? [last.part, ...parts] : parts) {
    const mark = pointAlong(strokes, part);
    const kept = part === last?.part ? last.spot : undefined;
    const placed = mark && placeLabel(mark, size, page, obstacles, { last: kept, distances: near });
    if (placed) return { box: placed.box, at: { part, spot: placed.spot } };
  }
  return undefined;
}

function pointAlong(strokes: readonly Stroke[], part: number): Place | undefined {
  return strokes[Math.min(strokes.length - 1, Math.floor(part * strokes.length))]?.from;
}
