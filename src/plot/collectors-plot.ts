// Several collectors' curves over the one curve of the ducts, with a point for each and its name beside
// the point, no name on another, and bands where all of that may lie.

import type { CollectorCurve } from '../curve/collector-curve.ts';
import type { CurveOrigin } from '../state/decisions/candidates.ts';
import type { UnitSystem } from '../units/quantity.ts';
import { type Axis, axis } from './axis.ts';
import { bezierPath } from './bezier-path.ts';
import { type CollectorLine, collectorLine } from './collector-line.ts';
import type { Box, Place, PlotFrame } from './frame.ts';
import { plotFrame } from './frame.ts';
import { type BandPlace, bandPath } from './line-panel.ts';
import { plotExtent } from './plot-extent.ts';

/** Between which suctions one may lie at a flow. */
export interface SuctionDoubt {
  /** [m³/s] */
  readonly flow: number;
  /** [Pa] */
  readonly suction: { readonly low: number; readonly high: number };
}

/** What is drawn. */
export interface CollectorsLines {
  /** What the ducts ask, by rising flow. */
  readonly system: readonly {
    readonly flow: number;
    readonly suction: number;
    readonly slope: number;
  }[];
  readonly systemDoubt: readonly SuctionDoubt[];
  readonly collectors: readonly {
    readonly name: string;
    readonly curve: CollectorCurve;
    readonly point: { readonly flow: number; readonly suction: number } | undefined;
    readonly origin: CurveOrigin;
    readonly curveDoubt: readonly SuctionDoubt[];
    /** Between which flows [m³/s] and suctions [Pa] the point may lie. */
    readonly pointDoubt:
      | {
          readonly flow: { readonly low: number; readonly high: number };
          readonly suction: { readonly low: number; readonly high: number };
        }
      | undefined;
  }[];
}

/** One collector, drawn [px]. */
export interface DrawnCollector {
  readonly name: string;
  /** The name as it stands at the point, cut short where it is long. */
  readonly short: string;
  readonly line: CollectorLine;
  /** The outline of its band. */
  readonly doubt: string;
  readonly point: Place | undefined;
  /** Where its name stands. */
  readonly label: Place | undefined;
  /** On which side of the point. */
  readonly side: 'right' | 'left';
}

/** All of it [px]. */
export interface CollectorsPlot {
  readonly frame: PlotFrame;
  readonly flow: Axis;
  readonly pressure: Axis;
  readonly system: string;
  /** The outline of its band. */
  readonly systemDoubt: string;
  /** Where the ducts' line is named, to the left of it. */
  readonly systemLabel: Place | undefined;
  readonly collectors: readonly DrawnCollector[];
  readonly height: number;
}

const MARGIN = { left: 48, right: 14, top: 28, bottom: 44 };
const HEIGHT = 380;
/** Names stand so far apart at least, and so far from their point [px]; that of the ducts below so much of the axis [-]. */
const LABEL = { apart: 17, away: 12, highest: 0.95, longest: 20 };
const TICK_SPACING = { across: 100, down: 72 };

/**
 * Draws the curves.
 *
 * @param lines - collectors and ducts
 * @param width - of the drawing [px]
 * @param widthOf - how wide a name will be [px]
 * @param system - units of the ticks
 * @returns curves, points and names
 * @throws RangeError without a collector
 */
export function collectorsPlot(
  lines: CollectorsLines,
  width: number,
  widthOf: (name: string) => number,
  system: UnitSystem,
): CollectorsPlot {
  const inner: Box = {
    left: MARGIN.left,
    top: MARGIN.top,
    right: width - MARGIN.right,
    bottom: HEIGHT - MARGIN.bottom,
  };
  const extents = lines.collectors.map(({ curve }) => plotExtent(curve));
  const frame = plotFrame(
    inner,
    Math.max(...extents.map(({ flow }) => flow)),
    Math.max(...extents.map(({ pressure }) => pressure)),
  );
  const places = lines.collectors.map(({ point }) =>
    point === undefined ? undefined : { x: frame.x(point.flow), y: frame.y(point.suction) },
  );
  const labels = apart(places, inner);
  const across = Math.max(2, Math.round((inner.right - inner.left) / TICK_SPACING.across));
  const down = Math.max(2, Math.round((inner.bottom - inner.top) / TICK_SPACING.down));
  const knots = lines.system
    .filter(({ flow }) => flow <= frame.flowEnd)
    .map(({ flow, suction, slope }) => ({ flow, pressure: suction, slope }));
  const highest = knots.findLast(({ pressure }) => pressure < LABEL.highest * frame.pressureEnd);
  return {
    frame,
    systemLabel: highest && {
      x: frame.x(highest.flow) - LABEL.away,
      y: frame.y(highest.pressure),
    },
    flow: axis('flow', system, frame.flowEnd, across),
    pressure: axis('pressure', system, frame.pressureEnd, down),
    system: knots.length < 2 ? '' : bezierPath(knots, frame),
    systemDoubt: bandOn(frame, lines.systemDoubt),
    collectors: lines.collectors.map(({ name, curve, curveDoubt }, i): DrawnCollector => {
      const point = places[i];
      const short = shortName(name);
      const fits = point === undefined || point.x + LABEL.away + widthOf(short) <= inner.right;
      const y = labels[i];
      return {
        name,
        short,
        line: collectorLine(curve, frame),
        doubt: bandOn(frame, curveDoubt),
        point,
        label:
          point === undefined || y === undefined
            ? undefined
            : { x: point.x + (fits ? LABEL.away : -LABEL.away), y },
        side: fits ? 'right' : 'left',
      };
    }),
    height: HEIGHT,
  };
}

function bandOn(frame: PlotFrame, doubt: readonly SuctionDoubt[]): string {
  return bandPath(
    doubt
      .filter(({ flow }) => flow <= frame.flowEnd)
      .map(({ flow, suction }): BandPlace => {
        return { x: frame.x(flow), low: frame.y(suction.low), high: frame.y(suction.high) };
      }),
  );
}

/** Up to its first comma, and no longer than has room on a phone. */
function shortName(name: string): string {
  const [first = name] = name.split(',');
  return first.length <= LABEL.longest ? first : `${first.slice(0, LABEL.longest - 1)}…`;
}

/** Heights of the names: each at its point, but pushed down by the one above where that is near. */
function apart(places: readonly (Place | undefined)[], inner: Box): (number | undefined)[] {
  const order = [...places.keys()]
    .filter((i) => places[i] !== undefined)
    .toSorted((a, b) => places[a]!.y - places[b]!.y);
  const heights: (number | undefined)[] = places.map(() => undefined);
  let free = inner.top;
  for (const i of order) {
    heights[i] = Math.max(places[i]!.y, free);
    free = heights[i] + LABEL.apart;
  }
  // Pushed past the axis, they are pushed up again from the lowest on.
  let bottom = inner.bottom - LABEL.apart / 2;
  for (const i of order.toReversed()) {
    heights[i] = Math.min(heights[i]!, bottom);
    bottom = heights[i] - LABEL.apart;
  }
  return heights;
}
