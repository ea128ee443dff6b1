// Small pictures side by side, one a drop: its air over the size of the main, and below it the lowest
// speed in the main, with the carrying range as a band. All have the same scales.

import type { UnitSystem } from '../units/quantity.ts';
import {
  type BandPlace,
  bandPath,
  brokenPath,
  type LinePanel,
  linePanel,
  panelAt,
} from './line-panel.ts';
import type { Place } from './frame.ts';

/** A drop with the main in one size. */
export interface MainStop {
  /** [m³/s] */
  readonly flow: number;
  /** Lowest speed in the main [m/s]; undefined where its air passes none of it */
  readonly speed: number | undefined;
  /** Where they may lie, as far as that is known. */
  readonly flowDoubt?: readonly [low: number, high: number] | undefined;
  readonly speedDoubt?: readonly [low: number, high: number] | undefined;
}

/** One drop. */
export interface MainSeries {
  readonly name: string;
  /** One a size. */
  readonly stops: readonly MainStop[];
  /** Its air with the main of today [m³/s] */
  readonly today: number;
}

/** One small picture [px]. */
export interface MainMultiple {
  readonly left: number;
  readonly top: number;
  readonly flow: LinePanel;
  readonly speed: LinePanel;
  readonly flowLine: string;
  readonly speedLine: string;
  readonly flowDoubt: string;
  readonly speedDoubt: string;
  readonly flowPlaces: readonly Place[];
  readonly speedPlaces: readonly (Place | undefined)[];
  /** Where each size stands across. */
  readonly across: readonly number[];
  /** Whether it bears the ticks of the upright axes: it stands at the left. */
  readonly isFirst: boolean;
}

/** All of them. */
export interface MainMultiples {
  readonly multiples: readonly MainMultiple[];
  readonly height: number;
}

/** Room around the panels of one picture, and between them [px]. */
const ROOM = { left: 46, right: 12, head: 26, between: 10, foot: 28 };
const PANEL = 62;
/** So wide is a picture at least, without its ticks [px]. */
const LEAST = 150;
/** Room above the highest value [-]. */
const HEADROOM = 1.1;

/**
 * Lays the pictures out.
 *
 * @param series - the drops
 * @param range - the carrying range [m/s]
 * @param width - of the drawing [px]
 * @param system - units of the ticks
 * @returns the pictures in rows
 * @throws RangeError where there is no size
 */
export function mainMultiples(
  series: readonly MainSeries[],
  range: { readonly low: number; readonly high: number },
  width: number,
  system: UnitSystem,
): MainMultiples {
  const count = series[0]?.stops.length ?? 0;
  if (count === 0) throw new RangeError('there is no size to draw');
  const columns = Math.max(1, Math.floor((width - ROOM.left) / (LEAST + ROOM.right)));
  const pitch = (width - ROOM.left) / Math.min(columns, series.length);
  const rowHeight = ROOM.head + 2 * PANEL + ROOM.between + ROOM.foot;
  const all = series.flatMap(({ stops }) => stops);
  const flowEnd =
    HEADROOM * Math.max(...all.map((s) => s.flowDoubt?.[1] ?? s.flow), Number.MIN_VALUE);
  const speedEnd =
    HEADROOM * Math.max(range.high, ...all.map((s) => s.speedDoubt?.[1] ?? s.speed ?? 0));
  const sizes = { quantity: 'count', end: Math.max(1, count - 1) } as const;
  const first = { left: 0, right: pitch - ROOM.right, top: 0, bottom: PANEL };
  const flow = linePanel(first, sizes, { quantity: 'flow', end: flowEnd }, system);
  const speed = linePanel(first, sizes, { quantity: 'velocity', end: speedEnd }, system);
  const multiples = series.map((each, i) => {
    const column = i % columns;
    const left = ROOM.left + column * pitch;
    const top = Math.floor(i / columns) * rowHeight;
    const right = left + pitch - ROOM.right;
    const box = (from: number) => ({ left, right, top: from, bottom: from + PANEL });
    const from = top + ROOM.head;
    return drawn(each, panelAt(box(from), flow), panelAt(box(from + PANEL + ROOM.between), speed), {
      left,
      top,
      isFirst: column === 0,
    });
  });
  return { multiples, height: Math.ceil(series.length / columns) * rowHeight };
}

function drawn(
  { stops }: MainSeries,
  flow: LinePanel,
  speed: LinePanel,
  place: Pick<MainMultiple, 'left' | 'top' | 'isFirst'>,
): MainMultiple {
  const across = stops.map((_, i) => flow.x(i));
  const flowPlaces = stops.map((stop, i) => ({ x: across[i]!, y: flow.y(stop.flow) }));
  const speedPlaces = stops.map((stop, i) =>
    stop.speed === undefined ? undefined : { x: across[i]!, y: speed.y(stop.speed) },
  );
  const band = (panel: LinePanel, of: (stop: MainStop) => MainStop['flowDoubt']) =>
    bandPath(
      stops.flatMap((stop, i): BandPlace[] => {
        const doubt = of(stop);
        if (doubt === undefined) return [];
        return [{ x: across[i]!, low: panel.y(doubt[0]), high: panel.y(doubt[1]) }];
      }),
    );
  return {
    ...place,
    flow,
    speed,
    flowLine: brokenPath(flowPlaces),
    speedLine: brokenPath(speedPlaces),
    flowDoubt: band(flow, ({ flowDoubt }) => flowDoubt),
    speedDoubt: band(speed, ({ speedDoubt }) => speedDoubt),
    flowPlaces,
    speedPlaces,
    across,
  };
}
