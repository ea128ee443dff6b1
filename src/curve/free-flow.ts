// The flow at which the collector has no suction left: what it moves with nothing attached.

import { findRoot } from '../math/bracket-root.ts';
import { availableSlope, availableSuction, type CollectorCurve } from './collector-curve.ts';

/**
 * The flow past which no suction is left for ducts, H(Q) = 0.
 *
 * Between entered points it is the root of the curve. Past the last point the curve goes on along
 * its end slope, less the separator's square; that has a root in closed form.
 *
 * @param curve - the collector as it runs now
 * @returns free flow [m³/s]; 0 if there is no suction at any flow, and Infinity if a curve that
 *   ends flat or rising is never used up
 */
export function freeFlow(curve: CollectorCurve): number {
  const flows = Array.from(curve.spline.x, (x) => x * curve.flowScale);
  const suction = (flow: number) => availableSuction(curve, flow);
  const index = flows.findLastIndex((flow) => suction(flow) > 0);

  const from = flows[index] ?? 0;
  const to = flows[index + 1];
  if (to === undefined) return from + pastTheEnd(curve, from);
  if (!(suction(from) > 0)) return 0;
  const search = findRoot(suction, from, to, 0);
  return search.kind === 'found' ? search.root : from;
}

/** Root of H + H′·δ − quadratic·δ² above zero, each form used where it loses no digits. */
function pastTheEnd(curve: CollectorCurve, end: number): number {
  const suction = availableSuction(curve, end);
  const slope = availableSlope(curve, end);
  if (slope >= 0 && curve.quadratic === 0) return Number.POSITIVE_INFINITY;
  const root = Math.sqrt(slope ** 2 + 4 * curve.quadratic * suction);
  return slope < 0 ? (2 * suction) / (root - slope) : (slope + root) / (2 * curve.quadratic);
}
