// The line that the entered points stand for, at the conditions of their test.

import type { HermiteSpline } from '../math/hermite.ts';
import { pchip } from '../math/pchip.ts';
import type { CurveData } from './curve-data.ts';
import { usedPoints } from './used-points.ts';

/**
 * Entered pressure against flow, as a spline, by the fit that the curve asks for.
 *
 * @param curve - the entered curve
 * @returns the spline, flow [m³/s] to pressure [Pa], as entered
 * @throws RangeError if the used points make no curve; the message holds the value
 */
export function enteredSpline(curve: CurveData): HermiteSpline {
  const points = usedPoints(curve);
  return pchip(
    points.map((point) => point.flow),
    points.map((point) => point.pressure),
  );
}
