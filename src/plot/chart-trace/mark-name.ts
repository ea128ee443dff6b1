// Where the name of a mark stands on the picture of a chart: outside the chart where there is room, clear
// of the curve and its points.

import type { Place } from '../frame.ts';
import type { MarkName } from './traced-chart.ts';

/** Half of what the eye sees of a mark, and the size of its name [px on the page]. */
export const MARK_ARM = 9;
const NAME_SIZE = 13;
/** What the longest name needs beside its mark, with the gap between them [px on the page]. */
const NAME_ROOM = 92;

/** A name as it is written. */
export interface NamePlace {
  /** Of its end that is nearer to the mark, on its base line [px of the picture]. */
  readonly place: Place;
  readonly anchor: 'start' | 'end';
  /** [px of the picture] */
  readonly size: number;
}

/**
 * The place of a name.
 *
 * @param mark - whose name it is
 * @param place - of the mark [px of the picture]
 * @param picture - its width and height [px]
 * @param scale - pixels of the picture for one of the page [-]
 * @returns where it is written
 */
export function namePlace(
  mark: MarkName,
  { x, y }: Place,
  picture: { readonly width: number; readonly height: number },
  scale: number,
): NamePlace {
  const arm = MARK_ARM * scale;
  const size = NAME_SIZE * scale;
  const room = NAME_ROOM * scale;
  const gap = arm + size / 3;
  if (mark.kind === 'axis' && mark.axis === 'pressure') {
    return x > room
      ? { place: { x: x - gap, y: y + size / 3 }, anchor: 'end', size }
      : { place: { x: Math.max(size / 4, x + gap - room), y: y - gap }, anchor: 'start', size };
  }
  const isBelow = mark.kind === 'axis' && y + 2 * arm + size < picture.height;
  const anchor = x > picture.width - room ? 'end' : 'start';
  const beside = anchor === 'end' ? x - gap : x + gap;
  return { place: { x: beside, y: isBelow ? y + arm + size : y - arm / 2 }, anchor, size };
}

/**
 * Two places on the way of a mark's name, to be kept in sight with the mark itself.
 *
 * @param name - what is written
 * @param at - where
 * @returns its middle and its far end, by the usual width of a letter [px of the picture]
 */
export function alongName(name: string, { place, anchor, size }: NamePlace): readonly Place[] {
  const length = name.length * size * 0.55 * (anchor === 'end' ? -1 : 1);
  const y = place.y - size / 3;
  return [
    { x: place.x + length / 2, y },
    { x: place.x + length, y },
  ];
}
