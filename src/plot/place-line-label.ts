// Finds a place for a line's own label: beside the line, as near as it goes without touching it.

import type { Box, Place } from './frame.ts';
import type { Obstacles, Stroke } from './obstacles.ts';
import { type LabelSize, placeLabel } from './place-label.ts';

/**
 * Tries the given parts of a line in turn.
 *
 * @param strokes - the line, end to end [px]
 * @param parts - where along it to try, 0 its start to 1 its end, best first [-]
 * @param size - of the label [px]
 * @param page - the label stays inside it [px]
 * @param obstacles - what it must not cover, the line itself among it
 * @param near - distances from the line to try [px]
 * @returns where the label stands, or undefined where nothing is free [px]
 */
export function placeLineLabel(
  strokes: readonly Stroke[],
  parts: readonly number[],
  size: LabelSize,
  page: Box,
  obstacles: Obstacles,
  near: readonly number[] = [8, 12, 18],
): Box | undefined {
  for (const part of parts) {
    const mark = pointAlong(strokes, part);
    const placed = mark && placeLabel(mark, size, page, obstacles, { distances: near });
    if (placed) return placed.box;
  }
  return undefined;
}

function pointAlong(strokes: readonly Stroke[], part: number): Place | undefined {
  return strokes[Math.min(strokes.length - 1, Math.floor(part * strokes.length))]?.from;
}
