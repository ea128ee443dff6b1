// Where the entered points stand on the collector as it runs now, to be shown beside its line.

import type { CollectorCurve } from './collector-curve.ts';

/** An entered point, carried to the present speed, wheel, density, separator, filter and number. */
export interface EnteredPoint {
  /** [m³/s] */
  readonly flow: number;
  /** [Pa] */
  readonly pressure: number;
  /** Whether it is set aside: kept and shown, but not used. */
  readonly aside: boolean;
}

/**
 * The entered points as the collector runs now. Everything that is done to the line is done to them.
 *
 * @param curve - the collector as it runs now
 * @returns flow [m³/s] and total suction left for the ducts [Pa] of each, in their order; the knots
 *   of the line for a curve that came without points
 */
export function enteredPoints(curve: CollectorCurve): EnteredPoint[] {
  const { flowScale, pressureScale, quadratic, linear, spline } = curve;
  const points =
    curve.points ??
    Array.from(spline.x, (flow, i) => ({ flow, pressure: spline.y[i]!, aside: undefined }));
  return points.map((point) => {
    const flow = flowScale * point.flow;
    const produced = pressureScale * point.pressure;
    return {
      flow,
      pressure: produced - flow * (quadratic * flow + linear),
      aside: point.aside === true,
    };
  });
}
