// The laid-out run as strokes on the page: line weight by diameter, 45 degree shoulders where a
// branch turns in and out, and the level stretch on which there is room for words and arrows.

import type { Place } from './frame.ts';
import type { RunLayout, SectionPlace } from './run-layout.ts';

/** Where the drawing goes. */
export interface RunFrame {
  /** Left edge of the first section, at the collector's flange [px] */
  readonly left: number;
  /** Where all open ends lie [px] */
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A section ready to draw [px]. */
export interface DrawnSection {
  /** From the open end towards the collector, so that the stroke runs as the air does. */
  readonly path: string;
  readonly weight: number;
  /** Its level stretch, from the end towards the collector to the end towards the drops. */
  readonly level: { readonly from: number; readonly to: number; readonly y: number };
  /** Where it meets what it empties into. */
  readonly foot: Place;
  /** Places along the level stretch where an arrow shows the way of the air. */
  readonly arrows: readonly number[];
}

/**
 * Weight of a line: so many pixels for a metre of diameter, fewer where large pipes would fill their
 * rows, within what can be told apart.
 */
const WEIGHT_PER_METRE = { least: 38, most: 54 };
const WEIGHT = { least: 3, most: 16 };
/** A line fills no more of its row [-]. */
const ROW_PART = 0.56;
/** Length of a shoulder along either axis, at most [px]. */
const SHOULDER = 9;
/** One arrow for so much of a level stretch; a shorter one than the least has none [px]. */
const ARROW_SPACING = 88;
const LEAST_FOR_ARROW = 16;

/**
 * Draws a laid-out run.
 *
 * @param layout - rows and columns of the sections
 * @param diameters - inside diameter of each section, in the layout's order [m]
 * @param frame - where to draw [px]
 * @returns the sections, in the layout's order
 */
export function runDrawing(
  layout: RunLayout,
  diameters: readonly number[],
  frame: RunFrame,
): DrawnSection[] {
  const pitch = (frame.bottom - frame.top) / layout.rows;
  const column = (frame.right - frame.left) / layout.columns;
  const x = (at: number) => round(frame.left + at * column);
  const y = (row: number) => round(frame.top + (row + 0.5) * pitch);
  const heaviest = clamp(ROW_PART * pitch, WEIGHT.least, WEIGHT.most);
  const perMetre = clamp(
    heaviest / Math.max(...diameters),
    WEIGHT_PER_METRE.least,
    WEIGHT_PER_METRE.most,
  );
  return layout.sections.map((place, i) => {
    const start = { x: x(place.start), y: y(place.intoRow) };
    const end = { x: x(place.end), y: y(place.row) };
    const turn = shoulder(place, start, end);
    // Past the shoulders of branches that leave from the same wye.
    const from = Math.min(end.x, start.x + Math.max(2 * turn, SHOULDER));
    return {
      path: sectionPath(start, end, turn),
      weight: round(clamp(perMetre * (diameters[i] ?? 0), WEIGHT.least, heaviest)),
      level: { from, to: end.x, y: end.y },
      foot: start,
      arrows: arrowsAlong(from, end.x),
    };
  });
}

/** How far a section that changes row goes sideways at either end of its riser. */
function shoulder(place: SectionPlace, start: Place, end: Place): number {
  if (place.row === place.intoRow) return 0;
  return Math.min(SHOULDER, Math.abs(end.y - start.y) / 2, (end.x - start.x) / 3);
}

function sectionPath(start: Place, end: Place, turn: number): string {
  if (turn === 0) return `M${end.x},${end.y}H${start.x}`;
  const down = Math.sign(start.y - end.y) * turn;
  return (
    `M${end.x},${end.y}H${start.x + 2 * turn}l${-turn},${down}` +
    `V${start.y - down}L${start.x},${start.y}`
  );
}

function arrowsAlong(from: number, to: number): number[] {
  const room = to - from;
  if (room < LEAST_FOR_ARROW) return [];
  const count = Math.max(1, Math.floor(room / ARROW_SPACING));
  return Array.from({ length: count }, (_, i) => round(from + ((i + 0.5) * room) / count));
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}

function round(value: number): number {
  return Math.round(100 * value) / 100;
}
