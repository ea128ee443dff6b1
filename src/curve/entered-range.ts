// How far the entered points reach. Outside them a curve is a guess, and whoever reads it must say so.

import type { CollectorCurve } from './collector-curve.ts';

/** Lowest and highest entered flow, as the collector runs now [m³/s]. */
export interface EnteredRange {
  readonly low: number;
  readonly high: number;
}

/**
 * The flows between which the curve follows entered points.
 *
 * @param curve - the collector as it runs now
 * @returns both ends [m³/s], carried to the present speed and wheel; low < high
 */
export function enteredRange(curve: CollectorCurve): EnteredRange {
  const { x } = curve.spline;
  return {
    low: curve.flowScale * (x[0] as number),
    high: curve.flowScale * (x[x.length - 1] as number),
  };
}

/**
 * Whether the curve follows entered points at this flow, both ends included.
 *
 * @param curve - the collector as it runs now
 * @param flow - flow at the flange [m³/s]
 * @returns false where the curve is only the straight continuation
 */
export function isWithinPoints(curve: CollectorCurve, flow: number): boolean {
  const range = enteredRange(curve);
  return flow >= range.low && flow <= range.high;
}
