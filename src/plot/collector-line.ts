// The collector's curve as it is drawn: hollow points where the maker entered them, the line through
// or between them, and the unknown stretches before the first and beyond the last point.
// What is drawn is the suction left at the flange, so the operating point lies on this line.

import { availableSlope, availableSuction, type CollectorCurve } from '../curve/collector-curve.ts';
import { enteredPoints } from '../curve/entered-points.ts';
import { bezierPath, type Knot } from './bezier-path.ts';
import type { Place, PlotFrame } from './frame.ts';
import { type Stroke, strokesAlong } from './obstacles.ts';

/** Paths and marks of the collector's curve [px]. */
export interface CollectorLine {
  /** Through the entered points, or smoothed between them. */
  readonly known: string;
  /** Outside them, along the end slopes. */
  readonly unknown: readonly string[];
  /** The used ones that lie inside the frame. */
  readonly points: readonly Place[];
  /** Those set aside, likewise. */
  readonly aside: readonly Place[];
  /** The line as an obstacle, and as something to label: first the known part, then all of it. */
  readonly strokes: { readonly known: readonly Stroke[]; readonly all: readonly Stroke[] };
}

/**
 * Draws the collector's curve. Exact: between neighbouring points the suction is one cubic, also
 * after a filter (linear in flow) and a separator (quadratic) have taken their share.
 *
 * @param curve - the collector as it runs now
 * @param frame - the plot's scales
 * @returns paths and points [px]; lines may leave the frame and are to be clipped
 */
export function collectorLine(curve: CollectorCurve, frame: PlotFrame): CollectorLine {
  const knots = enteredKnots(curve);
  const first = knots[0]!;
  const last = knots[knots.length - 1]!;
  const unknown: Knot[][] = [];
  if (first.flow > 0) unknown.push([knotAt(curve, 0), first]);
  if (last.flow < frame.flowEnd) unknown.push([last, knotAt(curve, frame.flowEnd)]);
  const known = strokesAlong(knots, frame);
  const entered = enteredPoints(curve).filter(
    ({ flow, pressure }) => pressure >= 0 && flow <= frame.flowEnd,
  );
  const places = (points: typeof entered): readonly Place[] =>
    points.map(({ flow, pressure }) => ({ x: frame.x(flow), y: frame.y(pressure) }));
  return {
    known: bezierPath(knots, frame),
    unknown: unknown.map((stretch) => bezierPath(stretch, frame)),
    points: places(entered.filter(({ aside }) => !aside)),
    aside: places(entered.filter(({ aside }) => aside)),
    strokes: { known, all: [...known, ...unknown.flatMap((each) => strokesAlong(each, frame))] },
  };
}

/**
 * The knots of the line, carried to the present speed, wheel, density, separator and filter. A line
 * through the entered points has its knots there.
 *
 * @param curve - the collector as it runs now
 * @returns one for each knot, by rising flow
 */
export function enteredKnots(curve: CollectorCurve): Knot[] {
  return Array.from(curve.spline.x, (x) => knotAt(curve, x * curve.flowScale));
}

function knotAt(curve: CollectorCurve, flow: number): Knot {
  return {
    flow,
    pressure: availableSuction(curve, flow),
    slope: availableSlope(curve, flow),
  };
}
