// How far the axes must reach to show the whole of a collector's curve.
// They depend on the collector alone, so that they keep their scale while gates move.

import { availableSuction, type CollectorCurve } from '../curve/collector-curve.ts';
import type { Knot } from './bezier-path.ts';
import { enteredKnots } from './collector-line.ts';

/** The largest values that a plot has to hold. */
export interface PlotExtent {
  /** Flow where the suction is used up, or near it [m³/s] */
  readonly flow: number;
  /** The largest suction on the curve [Pa] */
  readonly pressure: number;
}

/** How far past the last entered point the axis may go, over that point's flow [-]. */
const FURTHEST = 0.5;

/**
 * The extent of a collector's curve from no flow to no suction. Where the unknown stretch past the
 * last point is long, the extent stops half as far again as that point.
 *
 * @param curve - the collector as it runs now
 * @returns the extent, both above 0 [m³/s] [Pa]
 */
export function plotExtent(curve: CollectorCurve): PlotExtent {
  const knots = enteredKnots(curve);
  const last = knots[knots.length - 1]!;
  const beyond = Math.min(flowToSpend(last, curve.quadratic), FURTHEST * last.flow);
  const pressures = [availableSuction(curve, 0), ...knots.map((knot) => knot.pressure)];
  return { flow: last.flow + beyond, pressure: Math.max(...pressures) };
}

/** How much more flow uses up the suction after the last point: H + S·d − a·d² = 0. */
function flowToSpend({ pressure, slope }: Knot, quadratic: number): number {
  if (pressure <= 0) return 0;
  const steepness = Math.sqrt(slope ** 2 + 4 * quadratic * pressure) - slope;
  return steepness > 0 ? (2 * pressure) / steepness : Number.POSITIVE_INFINITY;
}
