// What a label must not cover: lines, as short straight strokes, and boxes of marks and other labels.

import type { Knot } from './bezier-path.ts';
import type { Box, Place, PlotFrame } from './frame.ts';

/** A straight stroke from one place to another [px]. */
export interface Stroke {
  readonly from: Place;
  readonly to: Place;
}

/** Everything in the way of a label. */
export interface Obstacles {
  readonly strokes: readonly Stroke[];
  readonly boxes: readonly Box[];
}

/** Strokes per cubic piece; at the size of a page the chord is within a pixel of the curve [-]. */
const STROKES_PER_PIECE = 8;

/**
 * The strokes that follow the cubic pieces through neighbouring knots.
 *
 * @param knots - by rising flow
 * @param frame - the plot's scales
 * @param perPiece - strokes to a piece; fewer will do where knots are close together [-]
 * @returns strokes end to end [px]
 */
export function strokesAlong(
  knots: readonly Knot[],
  frame: PlotFrame,
  perPiece = STROKES_PER_PIECE,
): Stroke[] {
  const places: Place[] = [];
  knots.forEach((knot, i) => {
    const next = knots[i + 1];
    const parts = next ? perPiece : 1;
    for (let part = 0; part < parts; part++) {
      places.push(next ? between(knot, next, part / parts, frame) : placeOf(knot, frame));
    }
  });
  return places.slice(1).map((to, i) => ({ from: places[i]!, to }));
}

/**
 * Where a part of such a line begins, without all the rest of it.
 *
 * @param knots - two at least, by rising flow
 * @param part - 0 the line's start to 1 its end [-]
 * @param frame - the plot's scales
 * @param perPiece - strokes to a piece [-]
 * @returns the start of the stroke that lies there [px]
 */
export function strokeStart(
  knots: readonly Knot[],
  part: number,
  frame: PlotFrame,
  perPiece = STROKES_PER_PIECE,
): Place {
  const count = perPiece * (knots.length - 1);
  const stroke = Math.min(count - 1, Math.floor(part * count));
  const piece = Math.floor(stroke / perPiece);
  return between(knots[piece]!, knots[piece + 1]!, (stroke % perPiece) / perPiece, frame);
}

function placeOf(knot: Knot, frame: PlotFrame): Place {
  return { x: frame.x(knot.flow), y: frame.y(knot.pressure) };
}

function between(from: Knot, to: Knot, t: number, frame: PlotFrame): Place {
  const width = to.flow - from.flow;
  const chord = to.pressure - from.pressure;
  const bend = (1 - t) * (from.slope * width - chord) - t * (to.slope * width - chord);
  const pressure = from.pressure + t * chord + t * (1 - t) * bend;
  return { x: frame.x(from.flow + t * width), y: frame.y(pressure) };
}

/**
 * Whether a box is free of strokes and of other boxes.
 *
 * @param box - where a label would stand [px]
 * @param obstacles - what is in the way
 * @param room - paper kept between them [px]
 * @returns true if nothing comes nearer than that
 */
export function isFree(box: Box, obstacles: Obstacles, room = 0): boolean {
  for (const other of obstacles.boxes) if (overlaps(box, other, room)) return false;
  for (const stroke of obstacles.strokes) if (crosses(stroke, box, room)) return false;
  return true;
}

function overlaps(a: Box, b: Box, room: number): boolean {
  return (
    a.left - room < b.right &&
    b.left < a.right + room &&
    a.top - room < b.bottom &&
    b.top < a.bottom + room
  );
}

/** Cuts the stroke to the box side by side; what is left over lies inside it. */
function crosses({ from, to }: Stroke, box: Box, room: number): boolean {
  const left = box.left - room;
  const right = box.right + room;
  const top = box.top - room;
  const bottom = box.bottom + room;
  const run = to.x - from.x;
  const rise = to.y - from.y;
  if (Math.max(from.x, to.x) < left || Math.min(from.x, to.x) > right) return false;
  if (Math.max(from.y, to.y) < top || Math.min(from.y, to.y) > bottom) return false;
  let enter = 0;
  let leave = 1;
  if (run !== 0) {
    enter = Math.max(enter, ((run > 0 ? left : right) - from.x) / run);
    leave = Math.min(leave, ((run > 0 ? right : left) - from.x) / run);
  }
  if (rise !== 0) {
    enter = Math.max(enter, ((rise > 0 ? top : bottom) - from.y) / rise);
    leave = Math.min(leave, ((rise > 0 ? bottom : top) - from.y) / rise);
  }
  return enter <= leave;
}
