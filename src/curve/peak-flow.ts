// Where the collector's curve has its peak. Left of it the fan may stall and the flow may pulse.

import type { CollectorCurve } from './collector-curve.ts';

/**
 * The flow below which the entered curve rises somewhere.
 *
 * The spline makes no hump of its own, so this is always an entered point: the far end of the last
 * stretch that rises. It is read from the produced pressure, since it is the fan that stalls: what
 * a tap, a separator or a filter takes off moves a peak to the left and must not hide it.
 *
 * @param curve - the collector as it runs now
 * @returns flow at the peak [m³/s], 0 if the points never rise
 */
export function peakFlow(curve: CollectorCurve): number {
  const { x, y } = curve.spline;
  for (let i = y.length - 1; i > 0; i--) {
    if ((y[i] as number) > (y[i - 1] as number)) return curve.flowScale * (x[i] as number);
  }
  return 0;
}
