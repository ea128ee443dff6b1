// Where the axes of the operating-point plot end. It depends on the collector alone, so that the
// axes keep their scale while gates move.

import { availableSuction, type CollectorCurve } from '../curve/collector-curve.ts';
import { enteredPoints } from '../curve/entered-points.ts';
import { freeFlow } from '../curve/free-flow.ts';
import { enteredKnots } from './collector-line.ts';

/** Ends of the two axes; both start at 0. */
export interface PlotExtent {
  /** [m³/s] */
  readonly flow: number;
  /** [Pa] */
  readonly pressure: number;
}

/** How far past the last entered point the curve is followed, over that point's flow [-]. */
const FURTHEST = 0.5;
/** Room past the end of the curve, and above it for its label [-]. */
const HEADROOM = { flow: 1.03, pressure: 1.12 };
/** A collector that gives nothing is still drawn on an axis [Pa]. */
const LEAST_PRESSURE = 1;

/** Asked for in every frame, and the same as long as the curve is. */
const known = new WeakMap<CollectorCurve, PlotExtent>();

/**
 * The extent of a collector's curve, from no flow to no suction, with some room. Where the unknown
 * stretch past the last point is long, it stops half as far again as that point.
 *
 * @param curve - the collector as it runs now
 * @returns the ends of the axes, both above 0
 */
export function plotExtent(curve: CollectorCurve): PlotExtent {
  const kept = known.get(curve);
  if (kept) return kept;
  const extent = newExtent(curve);
  known.set(curve, extent);
  return extent;
}

function newExtent(curve: CollectorCurve): PlotExtent {
  const knots = enteredKnots(curve);
  const used = enteredPoints(curve).filter(({ aside }) => !aside);
  const last = knots[knots.length - 1]!.flow;
  const flow = Math.min(freeFlow(curve) || last, (1 + FURTHEST) * last);
  const pressures = [
    availableSuction(curve, 0),
    ...[...knots, ...used].map(({ pressure }) => pressure),
  ];
  return {
    flow: HEADROOM.flow * flow,
    pressure: HEADROOM.pressure * Math.max(LEAST_PRESSURE, ...pressures),
  };
}
