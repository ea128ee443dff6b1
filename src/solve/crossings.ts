// Every flow at which the collector's curve meets the system curve of one gate state.
// The system curve always rises, so a falling stretch of the collector's curve meets it once at
// most. A rising stretch may meet it more often: there the slopes tell where the two draw nearer
// and apart again between two readings, and the nearest approach is looked at as well.

import { availableSlope, availableSuction, type CollectorCurve } from '../curve/collector-curve.ts';
import { findRoot } from '../math/bracket-root.ts';
import type { Network } from './network.ts';
import { settleAtFlow } from './settle.ts';
import type { Workspace } from './workspace.ts';

/** Readings in each rising stretch between two entered points. */
const RISING_PARTS = 6;
const MOST_DOUBLINGS = 60;
/** A change of sign with more than this part of the suction open is an end of the ducts' reach. */
const NO_GAP = 1e-6;

export interface Crossing {
  /** Flow at the flange [m³/s]. */
  readonly flow: number;
  /** Total suction at the flange [Pa]. */
  readonly suction: number;
  /** Whether the flow comes back after a disturbance: the collector's curve is the less steep. */
  readonly stable: boolean;
}

/** Collector's suction less the network's, and the slope of that, at one flow. */
interface Gap {
  readonly flow: number;
  readonly value: number;
  readonly slope: number;
}

/** At a flow that the ducts do not settle at they count as needing more than there is. */
const OUT_OF_REACH = { value: Number.NEGATIVE_INFINITY, slope: 0 };

/**
 * Whether a crossing can be the only one, judged by the entered points alone: the collector gives
 * no less anywhere to its left and no more anywhere to its right.
 * @param curve - the collector
 * @param flow - flow of the crossing [m³/s]
 * @returns true when there is no other; false when there may be
 */
export function isOnlyCrossing(curve: CollectorCurve, flow: number): boolean {
  const { x, y, slope } = curve.spline;
  if (curve.linear < 0 || slope[slope.length - 1]! > 0) return false;
  const here = availableSuction(curve, flow) + (curve.quadratic * flow + curve.linear) * flow;
  if (here > curve.pressureScale * (y[0]! - x[0]! * slope[0]!)) return false;
  for (let i = 0; i < x.length; i++) {
    const knot = x[i]! * curve.flowScale;
    const produced = y[i]! * curve.pressureScale;
    if (knot < flow ? produced < here : knot > flow && produced > here) return false;
  }
  return true;
}

/**
 * Finds all crossings from no flow to where the ducts need more than the collector can give.
 * @param network - the network
 * @param work - its workspace; left at one of the flows that were looked at
 * @param gate - loss coefficient of the gate in each section [-], shape (sections)
 * @param curve - the collector
 * @returns the crossings by rising flow [m³/s]; none where the collector gives no suction at all, or
 *   where the ducts do not settle at any flow at which it could be
 */
export function allCrossings(
  network: Network,
  work: Workspace,
  gate: Float64Array,
  curve: CollectorCurve,
): Crossing[] {
  const gapAt = (flow: number): Gap => {
    if (!settlesAt(network, work, gate, flow)) return { flow, ...OUT_OF_REACH };
    return {
      flow,
      value: availableSuction(curve, flow) - work.suction[0]!,
      slope: availableSlope(curve, flow) - work.slope[0]!,
    };
  };
  const gaps = flowsToRead(curve).map(gapAt);
  let last = gaps[gaps.length - 1]!;
  for (let i = 0; (last.value > 0 || last.slope > 0) && i < MOST_DOUBLINGS; i++) {
    last = gapAt(2 * last.flow);
    gaps.push(last);
  }
  const found: Crossing[] = [];
  for (let i = 1; i < gaps.length; i++) {
    for (const flow of rootsBetween(gapAt, gaps[i - 1]!, gaps[i]!)) {
      const { value, slope } = gapAt(flow);
      const suction = availableSuction(curve, flow);
      if (Math.abs(value) < NO_GAP * suction) found.push({ flow, suction, stable: slope < 0 });
    }
  }
  return found;
}

/** Settles from the last flows, and from the beginning where that fails. */
function settlesAt(network: Network, work: Workspace, gate: Float64Array, flow: number): boolean {
  if (settleAtFlow(network, work, gate, flow) > 0) return true;
  work.flow.fill(0);
  return settleAtFlow(network, work, gate, flow) > 0;
}

/** The entered points at present speed, rising stretches divided, and a flow near none at all. */
function flowsToRead(curve: CollectorCurve): number[] {
  const x = curve.spline.x.map((flow) => flow * curve.flowScale);
  const y = curve.spline.y;
  const end = x[x.length - 1]!;
  const flows = [1e-6 * end];
  const reach = (to: number, rising: boolean) => {
    const from = flows[flows.length - 1]!;
    if (to <= from) return;
    const parts = rising ? RISING_PARTS : 1;
    for (let k = 1; k <= parts; k++) flows.push(from + ((to - from) * k) / parts);
  };
  reach(x[0]!, curve.spline.slope[0]! > 0 || curve.linear < 0);
  for (let i = 1; i < x.length; i++) reach(x[i]!, y[i]! > y[i - 1]! || curve.linear < 0);
  return flows;
}

function rootsBetween(gapAt: (flow: number) => Gap, low: Gap, high: Gap): number[] {
  const value = (flow: number) => gapAt(flow).value;
  if (low.value > 0 !== high.value > 0) return oneRoot(value, low.flow, high.flow);
  const sign = low.value > 0 ? 1 : -1;
  if (!(low.slope * sign < 0 && high.slope * sign > 0)) return [];
  const nearest = findRoot((flow) => gapAt(flow).slope, low.flow, high.flow, 1e-9 * high.flow);
  if (nearest.kind !== 'found' || value(nearest.root) * sign > 0) return [];
  return [...oneRoot(value, low.flow, nearest.root), ...oneRoot(value, nearest.root, high.flow)];
}

function oneRoot(value: (flow: number) => number, low: number, high: number): number[] {
  const outcome = findRoot(value, low, high, 0);
  return outcome.kind === 'found' ? [outcome.root] : [];
}
