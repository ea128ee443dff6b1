// A collector for the plot tests: humped, with a filter and a separator, run fast.
import type { CollectorCurve } from '../../../src/curve/collector-curve.ts';
import { pchip } from '../../../src/math/pchip.ts';

export const sampleCurve: CollectorCurve = {
  spline: pchip([0, 0.1, 0.2, 0.3, 0.4, 0.5], [2000, 2060, 2040, 1800, 1300, 500]),
  flowScale: 1.1,
  pressureScale: 1.21,
  quadratic: 900,
  linear: 300,
};
