// Balances a network against a collector, or at a flow that is held: sweeps until nothing moves.
// Warm: begins from the flows that the workspace holds; where a gate has moved, its branch begins
// from the flow that the last suction at its wye would draw through the new opening.

import { type CollectorCurve, readAvailable } from '../curve/collector-curve.ts';
import { fillSpan, LAST_REYNOLDS } from './friction-table.ts';
import type { Network } from './network.ts';
import { sweepDown, sweepUp } from './sweep.ts';
import type { Workspace } from './workspace.ts';

/** A sweep that moves no flow by more than this part is the last: the error is of its square. */
const LAST_STEP = 5e-6;
const MOST_SWEEPS = 60;
/** A part of a flow that is lost in rounding sums of many flows. */
const ROUNDING = 1e-12;
/** A step to the curve that changes by less than this part of the flow is good enough. */
const SMALL_STEP = 1e-3;
/** Part of the flow by which to go aside where no step can be had. */
const ASIDE = 0.2;
/** Suction of a first guess [Pa]. */
const USUAL_SUCTION = 1000;

/**
 * Finds a balance of network and collector near the flows in the workspace.
 * @param network - the network
 * @param work - its workspace; holds the balance afterwards
 * @param gate - loss coefficient of the gate in each section, of effect at open ends [-], (sections)
 * @param curve - the collector
 * @returns the number of sweeps [-], or -1 when it did not settle; the flows then add up at least
 */
export function settle(
  network: Network,
  work: Workspace,
  gate: Float64Array,
  curve: CollectorCurve,
): number {
  begin(network, work, gate);
  for (let sweeps = 1; sweeps <= MOST_SWEEPS; sweeps++) {
    up(network, work);
    if (sweepDown(network, work, stepToCurve(work, curve)) < LAST_STEP) return sweeps;
  }
  up(network, work);
  return -1;
}

/**
 * Finds the balance of a network through which a given flow is drawn.
 * @param network - the network
 * @param work - its workspace; `suction[0]` [Pa] and `slope[0]` [Pa·s/m³] are the system curve's
 * @param gate - loss coefficient of the gate in each section [-], (sections)
 * @param flow - flow at the flange, above 0 [m³/s]
 * @returns the number of sweeps [-], or -1 when it did not settle
 */
export function settleAtFlow(
  network: Network,
  work: Workspace,
  gate: Float64Array,
  flow: number,
): number {
  begin(network, work, gate);
  for (let sweeps = 1; sweeps <= MOST_SWEEPS; sweeps++) {
    up(network, work);
    const rootStep = flow - work.flow[0]!;
    const step = sweepDown(network, work, rootStep);
    // The suction belongs to the flow before the step, so that one must have been the right one.
    if (step < LAST_STEP && Math.abs(rootStep) < ROUNDING * flow) return sweeps;
  }
  return -1;
}

/** A whole sweep up, filling the spans of the friction table that it meets for the first time. */
function up(network: Network, work: Workspace): void {
  let from = sweepUp(network, work, network.count - 1);
  while (from >= 0) {
    const reynolds = network.reynolds[from]! * work.flow[from]!;
    fillSpan(network.friction, from, Math.min(reynolds, LAST_REYNOLDS));
    from = sweepUp(network, work, from);
  }
}

/**
 * Step of the flow at the flange to where √suction, taken as straight, meets the curve. Where there
 * is no such line yet, or the collector rises faster than the ducts, it goes a little to the right,
 * where every curve falls in the end.
 * @param work - a workspace after a sweep up
 * @param curve - the collector
 * @returns the step [m³/s]
 */
export function stepToCurve(work: Workspace, curve: CollectorCurve): number {
  const flow = work.flow[0]!;
  const suction = work.suction[0]!;
  if (!(suction > 0)) return ASIDE * flow;
  const head = Math.sqrt(suction);
  const rise = work.slope[0]! / (2 * head);
  const { supply } = work;
  let step = 0;
  for (let i = 0; i < 3; i++) {
    const h = head + rise * step;
    readAvailable(curve, flow + step, supply);
    const excess = h * h - supply[0]!;
    const steepness = 2 * h * rise - supply[1]!;
    if (!(steepness > 0)) return ASIDE * flow;
    const change = excess / steepness;
    step = Math.max(step - change, -0.9 * flow);
    if (Math.abs(change) < SMALL_STEP * flow) break;
  }
  return step;
}

/**
 * Takes over the gates and gives branches whose gate has moved a flow to begin with: what the last
 * suction at the end of the branch draws through it now.
 */
function begin(network: Network, work: Workspace, gate: Float64Array): void {
  const { end, last, resistance } = network.branches;
  const { flow, suction } = work;
  const isCold = !(flow[0]! > 0);
  for (let k = 0; k < end.length; k++) {
    const i = end[k]!;
    if (!isCold && gate[i] === work.gate[i]) continue;
    const drawing = suction[last[k]!]!;
    const total = resistance[k]! + gate[i]! * network.dynamic[i]!;
    flow[i] = Math.sqrt((drawing > 0 ? drawing : USUAL_SUCTION) / total);
  }
  for (let i = 0; i < network.count; i++) work.gate[i] = gate[i]!;
}
