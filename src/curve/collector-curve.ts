// What suction the collector has left for the ducts at its inlet flange, flow by flow.
// One closed form for every kind of curve, filter and separator, so that it is quick to read.

import { type HermiteSpline, slopeAt, valueAt } from '../math/hermite.ts';

/**
 * The total suction available at the flange as a function of flow:
 *
 *     H(Q) = pressureScale · spline(Q / flowScale) − quadratic · Q² − linear · Q
 *
 * `spline` is the entered points as they stand. `flowScale` [-] and `pressureScale` [-] carry
 * them to the present speed, wheel and density. `quadratic` [Pa/(m³/s)²] is the velocity pressure
 * at a suction tap and a separator that the points don't hold; `linear` [Pa·s/m³] is the filter.
 */
export interface CollectorCurve {
  readonly spline: HermiteSpline;
  readonly flowScale: number;
  readonly pressureScale: number;
  readonly quadratic: number;
  readonly linear: number;
}

/**
 * Total suction that the collector leaves for the ducts: after its separator and filter.
 *
 * Continuous, with a continuous slope. Outside the entered points the spline goes on straight.
 *
 * @param curve - the collector as it runs now
 * @param flow - flow at the flange, 0 or more [m³/s]
 * @returns available total suction, relative to the room [Pa]; negative past the free flow
 * @throws RangeError if `flow` is not a finite number
 */
export function availableSuction(curve: CollectorCurve, flow: number): number {
  return producedPressure(curve, flow) - flow * (curve.quadratic * flow + curve.linear);
}

/**
 * Slope of the available suction, dH/dQ.
 *
 * @param curve - the collector as it runs now
 * @param flow - flow at the flange, 0 or more [m³/s]
 * @returns the slope [Pa·s/m³]; continuous, below zero where more flow means less suction
 * @throws RangeError if `flow` is not a finite number
 */
export function availableSlope(curve: CollectorCurve, flow: number): number {
  const produced =
    (curve.pressureScale / curve.flowScale) * slopeAt(curve.spline, flow / curve.flowScale);
  return produced - 2 * curve.quadratic * flow - curve.linear;
}

/**
 * What the entered points say, carried to the present speed, wheel and density; before the tap's
 * velocity pressure, the separator and the filter are taken off.
 *
 * @param curve - the collector as it runs now
 * @param flow - flow at the flange, 0 or more [m³/s]
 * @returns produced pressure [Pa]
 * @throws RangeError if `flow` is not a finite number
 */
export function producedPressure(curve: CollectorCurve, flow: number): number {
  return curve.pressureScale * valueAt(curve.spline, flow / curve.flowScale);
}
