// The line that the entered points stand for, at the conditions of their test.

import { fallingFit } from '../math/falling-fit.ts';
import type { HermiteSpline } from '../math/hermite.ts';
import { pchip } from '../math/pchip.ts';
import type { CurveData } from './curve-data.ts';
import { usedPoints } from './used-points.ts';

/**
 * Entered pressure against flow, as a spline, by the fit that the curve asks for: exactly through
 * the used points, or the closest line between them that falls beyond its peak.
 *
 * @param curve - the entered curve
 * @returns the spline, flow [m³/s] to pressure [Pa], as entered
 * @throws RangeError if the used points make no curve; the message holds the value
 */
export function enteredSpline(curve: Pick<CurveData, 'points' | 'fit'>): HermiteSpline {
  const points = usedPoints(curve);
  const flows = points.map((point) => point.flow);
  const pressures = points.map((point) => point.pressure);
  const fit = curve.fit ?? { kind: 'through' };
  switch (fit.kind) {
    case 'through':
      return pchip(flows, pressures);
    case 'smooth':
      return fallingFit(flows, pressures, fit.pieces);
    default:
      return fit satisfies never;
  }
}
