// Which of the entered points are used: a point can be set aside without being lost.

import type { CurveData, CurvePoint } from './curve-data.ts';

/**
 * The points that the line is drawn by.
 *
 * @param curve - the entered curve
 * @returns the points that are not set aside, flow [m³/s] and pressure [Pa], in their order
 */
export function usedPoints(curve: Pick<CurveData, 'points'>): readonly CurvePoint[] {
  return curve.points.filter((point) => point.aside !== true);
}
