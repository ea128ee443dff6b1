// The laid-out run as strokes on the page: line weight by diameter, 45 degree shoulders where a
// branch turns in and out, and where on each section there is room for words.

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
  /** Middle of its level stretch. */
  readonly middle: Place;
  /** Length of its level stretch. */
  readonly room: number;
  /** Its end towards the drops. */
  readonly open: Place;
}

/** Weight of a line: so many pixels for a metre of diameter, within what can be told apart. */
const WEIGHT_PER_METRE = 42;
const WEIGHT = { least: 2.5, most: 14 };
/** Length of a shoulder along either axis, at most [px]. */
const SHOULDER = 9;

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
  const x = (at: number) => frame.left + at * column;
  const y = (row: number) => frame.top + (row + 0.5) * pitch;
  return layout.sections.map((place, i) => {
    const start = { x: x(place.start), y: y(place.intoRow) };
    const end = { x: x(place.end), y: y(place.row) };
    const turn = shoulder(place, start, end);
    // Past the shoulders of branches that leave from the same wye.
    const level = start.x + Math.max(2 * turn, SHOULDER);
    return {
      path: sectionPath(start, end, turn),
      weight: clamp(WEIGHT_PER_METRE * (diameters[i] ?? 0), WEIGHT.least, WEIGHT.most),
      middle: { x: (level + end.x) / 2, y: end.y },
      room: end.x - level,
      open: end,
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

function clamp(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
