// A drop over the length that is added to its run: its air above, the lowest speed on its way below,
// both over the same lengths, with what it needs and the carrying range marked.

import type { UnitSystem } from '../units/quantity.ts';
import { type BandPlace, bandPath, brokenPath, type LinePanel, linePanel } from './line-panel.ts';
import type { Place } from './frame.ts';

/** The drop at one length; undefined figures where nothing flows. */
export interface ReachStop {
  /** Added length [m] */
  readonly length: number;
  /** [m³/s] */
  readonly flow: number | undefined;
  /** [m/s] */
  readonly slowest: number | undefined;
}

/** What may lie on either side of the lines, where that is known. */
export interface ReachDoubt {
  /** Added length [m] */
  readonly length: number;
  /** [m³/s] */
  readonly flow: readonly [low: number, high: number];
  /** [m/s] */
  readonly slowest: readonly [low: number, high: number];
}

/** What is drawn. */
export interface ReachLines {
  readonly stops: readonly ReachStop[];
  readonly doubt: readonly ReachDoubt[];
  /** [m³/s] */
  readonly need: number | undefined;
  /** [m/s] */
  readonly range: { readonly low: number; readonly high: number };
}

/** One line in its panel [px]. */
export interface ReachPanel {
  readonly panel: LinePanel;
  readonly line: string;
  readonly doubt: string;
  readonly places: readonly Place[];
  /** Stops that the places belong to, counted from 0. */
  readonly at: readonly number[];
}

/** Both panels [px]. */
export interface ReachPlot {
  readonly flow: ReachPanel;
  readonly slowest: ReachPanel;
  readonly height: number;
}

/** Room around the panels [px]. */
const MARGIN = { left: 56, right: 14, top: 26, between: 34, bottom: 44 };
const PANEL = 132;
/** Room above the highest value [-]. */
const HEADROOM = 1.12;

/**
 * Draws both lines.
 *
 * @param lines - the drop over the added length
 * @param width - of the drawing [px]
 * @param system - units of the ticks
 * @returns two panels of the same lengths
 * @throws RangeError where the stops don't reach above no length
 */
export function reachPlot(lines: ReachLines, width: number, system: UnitSystem): ReachPlot {
  const { stops, doubt, need = 0, range } = lines;
  const end = { quantity: 'length', end: stops.at(-1)?.length ?? 0 } as const;
  const left = MARGIN.left;
  const right = width - MARGIN.right;
  const highest = (values: readonly (number | undefined)[]) =>
    HEADROOM * Math.max(...values.map((value) => value ?? 0), Number.MIN_VALUE);
  const top = { first: MARGIN.top, second: MARGIN.top + PANEL + MARGIN.between };
  const panelFrom = (from: number) => ({ left, right, top: from, bottom: from + PANEL });
  const flowEnd = highest([need, ...stops.map(({ flow }) => flow), ...doubt.map((d) => d.flow[1])]);
  const speedEnd = highest([
    range.high,
    ...stops.map(({ slowest }) => slowest),
    ...doubt.map((d) => d.slowest[1]),
  ]);
  return {
    flow: drawn(
      linePanel(panelFrom(top.first), end, { quantity: 'flow', end: flowEnd }, system),
      lines,
      'flow',
    ),
    slowest: drawn(
      linePanel(panelFrom(top.second), end, { quantity: 'velocity', end: speedEnd }, system),
      lines,
      'slowest',
    ),
    height: top.second + PANEL + MARGIN.bottom,
  };
}

function drawn(panel: LinePanel, lines: ReachLines, what: 'flow' | 'slowest'): ReachPanel {
  const places = lines.stops.map((stop): Place | undefined => {
    const value = stop[what];
    return value === undefined ? undefined : { x: panel.x(stop.length), y: panel.y(value) };
  });
  const band = lines.doubt.map((doubt): BandPlace => {
    const [low, high] = doubt[what];
    return { x: panel.x(doubt.length), low: panel.y(low), high: panel.y(high) };
  });
  return {
    panel,
    line: brokenPath(places),
    doubt: bandPath(band),
    places: places.filter((place) => place !== undefined),
    at: places.flatMap((place, i) => (place === undefined ? [] : [i])),
  };
}
