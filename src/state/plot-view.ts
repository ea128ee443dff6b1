// The operating-point plot's data in one state of the gates: the ducts' own curve solved flow by
// flow, the point, and whatever else has to be marked.

import { gateCoefficients } from '../shop/network-of.ts';
import type { Travels } from '../shop/gate-state.ts';
import type { ShopModel } from '../shop/shop-model.ts';
import type { StateReport } from '../shop/state-report.ts';
import { systemCurve } from '../solve/system-curve.ts';

/** Pressure and slope of the ducts' curve at a flow. */
export interface SystemKnot {
  /** Flow at the flange [m³/s] */
  readonly flow: number;
  /** Total suction that the ducts need there [Pa] */
  readonly pressure: number;
  /** Its slope there [Pa·s/m³] */
  readonly slope: number;
}

/** How many stretches the ducts' curve is drawn in: slopes are exact, so few will do. */
const STRETCHES = 4;

/**
 * The ducts' curve for one state of the gates, from no flow to the edge of the plot. It passes
 * through the operating point, which is one of its knots.
 *
 * @param model - the shop, ready to be balanced
 * @param travels - travel of each drop's gate [-]
 * @param report - the same state, balanced
 * @param flowEnd - where the plot ends, above 0 [m³/s]
 * @param pressureEnd - where the plot ends, above 0 [Pa]
 * @returns knots by rising flow; none without an operating point
 */
export function systemKnots(
  model: ShopModel,
  travels: Travels,
  report: StateReport,
  flowEnd: number,
  pressureEnd: number,
): SystemKnot[] {
  const point = report.operatingPoint;
  if (!point) return [];
  // Suction grows about as the square of the flow, so here the curve leaves the plot at its top.
  const top = point.flow * Math.sqrt(pressureEnd / point.suction);
  const end = Math.max(point.flow, Math.min(flowEnd, 1.03 * top));
  const even = Array.from({ length: STRETCHES + 1 }, (_, i) => (end * i) / STRETCHES);
  const apart = even.filter((flow) => Math.abs(flow - point.flow) > 1e-3 * end);
  const flows = [...apart, point.flow].toSorted((a, b) => a - b);
  const gates = gateCoefficients(model.ducts, travels);
  return systemCurve(model.ducts.network, gates, flows, model.curveWork).map(
    ({ flow, suction, slope }) => ({ flow, pressure: suction, slope }),
  );
}
