// Finds a place for a label beside a mark, where it covers no line and no other mark.
// Nearest first, and at each distance up and to the right first, as a hand would write it.

import type { Box, Place } from './frame.ts';
import { isFree, type Obstacles } from './obstacles.ts';

/** Width and height of a label [px]. */
export interface LabelSize {
  readonly width: number;
  readonly height: number;
}

/** Where a label stands as seen from its mark. Kept, it saves the label from hopping about. */
export interface LabelSpot {
  /** Direction, 0 to the right, turning clockwise on the page [rad] */
  readonly direction: number;
  /** Free space between the mark's centre and the label [px] */
  readonly distance: number;
}

/** A label that found its place. */
export interface PlacedLabel {
  readonly box: Box;
  readonly spot: LabelSpot;
}

/** Paper kept between a label and whatever it must not cover [px]. */
const ROOM = 4;
const DISTANCES = [16, 20, 28, 40, 56, 76, 100, 140, 180];
const STEPS = 16;
/** Where the whole page is searched, it is in steps of so much [px]. */
const GRID = 8;
/** Up and to the right, then turning away from it on both sides in turn. */
const DIRECTIONS = Array.from({ length: STEPS }, (_, i) => {
  const turns = i % 2 === 0 ? i / 2 : -(i + 1) / 2;
  return -Math.PI / 4 + (turns * 2 * Math.PI) / STEPS;
});

/** What is tried, where it isn't the usual. */
export interface LabelSearch {
  /** Where the label stood before; kept if it is still free. */
  readonly last?: LabelSpot | undefined;
  /** Free space between mark and label, nearest first [px] */
  readonly distances?: readonly number[];
}

/**
 * Finds the nearest free place for a label.
 *
 * @param mark - what is labelled [px]
 * @param size - of the label [px]
 * @param page - the label stays inside it [px]
 * @param obstacles - what it must not cover
 * @param search - what is tried; distances from 16 to 180 px if not said
 * @returns the place, or undefined where none of the tried ones is free
 */
export function placeLabel(
  mark: Place,
  size: LabelSize,
  page: Box,
  obstacles: Obstacles,
  { last, distances = DISTANCES }: LabelSearch = {},
): PlacedLabel | undefined {
  // Some hundred places are tried for a label while a gate moves, so they share one box.
  const box = { left: 0, top: 0, right: 0, bottom: 0 };
  const fits = (direction: number, distance: number) => {
    lay(box, mark, size, direction, distance);
    return isInside(box, page) && isFree(box, obstacles, ROOM);
  };
  if (last && fits(last.direction, last.distance)) return { box, spot: last };
  for (const distance of distances) {
    for (const direction of DIRECTIONS) {
      if (fits(direction, distance)) return { box, spot: { direction, distance } };
    }
  }
  return undefined;
}

/**
 * Finds the nearest free place for a label anywhere on the page, where there is none beside its mark.
 *
 * @param mark - what is labelled [px]
 * @param size - of the label [px]
 * @param page - the label stays inside it [px]
 * @param obstacles - what it must not cover
 * @returns the place, or undefined where the page has no room at all [px]
 */
export function placeAnywhere(
  mark: Place,
  size: LabelSize,
  page: Box,
  obstacles: Obstacles,
): Box | undefined {
  const places: { readonly box: Box; readonly away: number }[] = [];
  for (let left = page.left; left + size.width <= page.right; left += GRID) {
    for (let top = page.top; top + size.height <= page.bottom; top += GRID) {
      const box = { left, top, right: left + size.width, bottom: top + size.height };
      const away = Math.hypot(left + size.width / 2 - mark.x, top + size.height / 2 - mark.y);
      places.push({ box, away });
    }
  }
  places.sort((a, b) => a.away - b.away);
  return places.find(({ box }) => isFree(box, obstacles, ROOM))?.box;
}

/**
 * Where a label stands at a spot: it turns about its mark and shows it the side or the corner that is
 * nearest.
 *
 * @param mark - what is labelled [px]
 * @param size - of the label [px]
 * @param spot - as seen from the mark
 * @returns the label's box [px]
 */
export function boxAt(mark: Place, size: LabelSize, { direction, distance }: LabelSpot): Box {
  const box = { left: 0, top: 0, right: 0, bottom: 0 };
  lay(box, mark, size, direction, distance);
  return box;
}

function lay(
  box: { -readonly [Side in keyof Box]: Box[Side] },
  mark: Place,
  size: LabelSize,
  direction: number,
  distance: number,
): void {
  const along = Math.cos(direction);
  const down = Math.sin(direction);
  const x = mark.x + distance * along + (lean(along) * size.width) / 2;
  const y = mark.y + distance * down + (lean(down) * size.height) / 2;
  box.left = x - size.width / 2;
  box.top = y - size.height / 2;
  box.right = x + size.width / 2;
  box.bottom = y + size.height / 2;
}

function isInside(box: Box, page: Box): boolean {
  return (
    box.left >= page.left &&
    box.right <= page.right &&
    box.top >= page.top &&
    box.bottom <= page.bottom
  );
}

function lean(part: number): number {
  return Math.max(-1, Math.min(1, Math.SQRT2 * part));
}
