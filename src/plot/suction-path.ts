// Static and total suction on the way from a hood to the collector, drawn as a log is: the way goes
// down the page, one row a part, and suction grows to the right. What is lost along a length makes a
// slope, what is lost at one place a step. Between the two lines lies the velocity pressure.

import type { UnitSystem } from '../units/quantity.ts';
import { type Axis, axis } from './axis.ts';
import type { Box, Place } from './frame.ts';

/** One part on the way. */
export interface WayPart {
  readonly comes: 'gradually' | 'at once';
  /** Of all that is lost on the way [-] */
  readonly part: number;
  /** Total suction after it [Pa] */
  readonly total: number;
  /** Static suction after it [Pa] */
  readonly static: number;
}

/** A row of the drawing [px]. */
export interface WayRow {
  readonly top: number;
  readonly bottom: number;
  /** Where the two lines leave the row. */
  readonly total: Place;
  readonly static: Place;
  /** Where the total line grows within the row; drawn stronger where the part takes much. */
  readonly stroke: string;
}

/** Lines and rows, ready to draw [px]. */
export interface SuctionPath {
  readonly inner: Box;
  readonly axis: Axis;
  /** Suction [Pa] to its place from the left [px]. */
  readonly x: (suction: number) => number;
  readonly rows: readonly WayRow[];
  readonly total: string;
  readonly static: string;
  /** The stretch between the lines. */
  readonly between: string;
}

/** Where to draw. */
export interface WayFrame {
  /** [px] */
  readonly left: number;
  /** [px] */
  readonly right: number;
  /** [px] */
  readonly top: number;
  /** Height of each row [px] */
  readonly heights: readonly number[];
  /** Suction at the right edge, above 0 [Pa] */
  readonly end: number;
}

/** One tick for about so much of the axis [px]. */
const TICK_SPACING = 84;

/**
 * Draws the way.
 *
 * @param parts - what is lost on it, in the order in which air passes
 * @param frame - where to draw; a height for each part [px]
 * @param system - units of the ticks
 * @returns lines and rows; the lines begin in the room, at no suction
 * @throws RangeError if the frame has not a height for each part
 */
export function suctionPath(
  parts: readonly WayPart[],
  frame: WayFrame,
  system: UnitSystem,
): SuctionPath {
  const { left, right, top, heights, end } = frame;
  if (heights.length !== parts.length) {
    throw new RangeError(`${parts.length} parts need as many heights, not ${heights.length}`);
  }
  const ticks = Math.max(2, Math.round((right - left) / TICK_SPACING));
  const x = (suction: number) => Math.round(10 * (left + ((right - left) * suction) / end)) / 10;
  const rows: WayRow[] = [];
  const total: Place[] = [{ x: x(0), y: top }];
  const held: Place[] = [{ x: x(0), y: top }];
  let y = top;
  parts.forEach((part, i) => {
    const bottom = y + heights[i]!;
    const row = { top: y, bottom };
    const from = total.at(-1)!.x;
    const way = passage(part.comes, from, x(part.total), row);
    const stroke = part.comes === 'gradually' ? [{ x: from, y }, ...way] : way.slice(0, 2);
    total.push(...way);
    held.push(...passage(part.comes, held.at(-1)!.x, x(part.static), row));
    rows.push({ ...row, total: total.at(-1)!, static: held.at(-1)!, stroke: pathOf(stroke) });
    y = bottom;
  });
  return {
    inner: { left, right, top, bottom: y },
    axis: axis('pressure', system, end, ticks),
    x,
    rows,
    total: pathOf(total),
    static: pathOf(held),
    between: `${pathOf([...total, ...held.toReversed()])}Z`,
  };
}

/** How a line goes through a row: a slope along a length, else a step in the middle of the row. */
function passage(
  comes: WayPart['comes'],
  from: number,
  to: number,
  { top, bottom }: { readonly top: number; readonly bottom: number },
): Place[] {
  if (comes === 'gradually') return [{ x: to, y: bottom }];
  const middle = (top + bottom) / 2;
  return [
    { x: from, y: middle },
    { x: to, y: middle },
    { x: to, y: bottom },
  ];
}

function pathOf(places: readonly Place[]): string {
  return places.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${x},${y}`).join('');
}
