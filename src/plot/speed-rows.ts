// Speeds under one another on one scale, a row a drop, with the carrying range as a band through all
// rows. The scale starts at 0 and stays put while gates move.

import type { UnitSystem } from '../units/quantity.ts';
import { type Axis, axis } from './axis.ts';
import type { Box } from './frame.ts';
import { type SpeedRange, speedScale } from './speed-scale.ts';

/** Speeds of one drop [m/s]; undefined where it is shut. */
export interface RowSpeeds {
  readonly own: number | undefined;
  /** In the slowest section on its way, where that isn't its own. */
  readonly slowest: number | undefined;
  readonly formerOwn: number | undefined;
  readonly formerSlowest: number | undefined;
}

/** A mark on the scale. */
export interface SpeedMark {
  /** [px] */
  readonly x: number;
  /** Whether the speed lies past the end of the scale. */
  readonly isPastEnd: boolean;
}

/** A row ready to draw [px]. */
export interface DrawnRow {
  readonly top: number;
  /** Where the marks stand. */
  readonly base: number;
  readonly bottom: number;
  readonly own: SpeedMark | undefined;
  readonly slowest: SpeedMark | undefined;
  readonly formerOwn: SpeedMark | undefined;
  readonly formerSlowest: SpeedMark | undefined;
}

/** All rows on their scale [px]. */
export interface SpeedRows {
  readonly inner: Box;
  readonly band: { readonly left: number; readonly right: number };
  readonly axis: Axis;
  /** Speed [m/s] to its place [px]. */
  readonly x: (speed: number) => number;
  readonly rows: readonly DrawnRow[];
}

/** One tick for about so much of the scale [px]. */
const TICK_SPACING = 90;

/**
 * Lays out the rows.
 *
 * @param speeds - of each drop [m/s]
 * @param range - the carrying range [m/s]
 * @param frame - left, right and top of the rows, and how high each is [px]
 * @param system - units of the ticks
 * @returns the rows in the same order
 * @throws RangeError if there is no width, or the range is not rising
 */
export function speedRows(
  speeds: readonly RowSpeeds[],
  range: SpeedRange,
  frame: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly pitch: number;
  },
  system: UnitSystem,
): SpeedRows {
  const { left, right, top, pitch } = frame;
  const scale = speedScale(right - left, range);
  const x = (speed: number) => Math.round(10 * (left + scale.at(speed))) / 10;
  const mark = (speed: number | undefined): SpeedMark | undefined =>
    speed === undefined ? undefined : { x: x(speed), isPastEnd: scale.isPastEnd(speed) };
  const wanted = Math.max(2, Math.round((right - left) / TICK_SPACING));
  return {
    inner: { left, right, top, bottom: top + pitch * speeds.length },
    band: { left: left + scale.rangeStart, right: left + scale.rangeEnd },
    axis: axis('velocity', system, scale.end, wanted),
    x,
    rows: speeds.map((row, i) => ({
      top: top + i * pitch,
      base: top + i * pitch + Math.round(0.64 * pitch),
      bottom: top + (i + 1) * pitch,
      own: mark(row.own),
      slowest: mark(row.slowest),
      formerOwn: mark(row.formerOwn),
      formerSlowest: mark(row.formerSlowest),
    })),
  };
}
