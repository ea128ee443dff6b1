// Balances a network against a collector, or at a flow that is held: sweeps until nothing moves.
// Warm: begins from the flows that the workspace holds; where a gate has moved, its branch begins
// from the flow that the last suction at its wye would draw through the new opening.

import { availableSlope, availableSuction, type CollectorCurve } from '../curve/collector-curve.ts';
import type { Network } from './network.ts';
import { sweepDown, sweepUp, type Workspace } from './sweep.ts';

/** A sweep that moves no flow by more than this part is the last: the error is of its square. */
const LAST_STEP = 1e-5;
const MOST_SWEEPS = 60;
/** A part of a flow that is lost in rounding sums of many flows. */
const ROUNDING = 1e-12;
/** Part of the flow by which to go aside where no step can be had. */
const ASIDE = 0.2;
/** Friction factor and suction [Pa] of a first guess. */
const USUAL_FRICTION = 0.02;
const USUAL_SUCTION = 1000;

/**
 * Finds a balance of network and collector near the flows in the workspace.
 * @param network - the network
 * @param work - its workspace; holds the balance afterwards
 * @param gate - loss coefficient of the gate in each section, of effect at open ends [-], (sections)
 * @param curve - the collector
 * @returns the number of sweeps [-], or -1 when it did not settle
 */
export function settle(
  network: Network,
  work: Workspace,
  gate: Float64Array,
  curve: CollectorCurve,
): number {
  begin(network, work, gate);
  for (let sweeps = 1; sweeps <= MOST_SWEEPS; sweeps++) {
    sweepUp(network, work);
    const rootStep = stepToCurve(work, curve);
    if (sweepDown(network, work, rootStep) < LAST_STEP) return sweeps;
  }
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
    sweepUp(network, work);
    const rootStep = flow - work.flow[0]!;
    const largest = sweepDown(network, work, rootStep);
    // The suction belongs to the flow before the step, so that one must have been the right one.
    if (largest < LAST_STEP && Math.abs(rootStep) < ROUNDING * flow) return sweeps;
  }
  return -1;
}

/**
 * Step of the flow at the flange to where √suction, taken as straight, meets the curve [m³/s].
 * Where there is no such line yet, or the collector rises faster than the ducts, it goes a little
 * to the right, where every curve falls in the end.
 */
function stepToCurve(work: Workspace, curve: CollectorCurve): number {
  const flow = work.flow[0]!;
  const suction = work.suction[0]!;
  if (!(suction > 0)) return ASIDE * flow;
  const head = Math.sqrt(suction);
  const rise = work.slope[0]! / (2 * head);
  let step = 0;
  for (let i = 0; i < 3; i++) {
    const h = head + rise * step;
    const excess = h * h - availableSuction(curve, flow + step);
    const steepness = 2 * h * rise - availableSlope(curve, flow + step);
    if (!(steepness > 0)) return ASIDE * flow;
    const next = Math.max(step - excess / steepness, -0.9 * flow);
    if (Math.abs(next - step) < 1e-12 * flow) return next;
    step = next;
  }
  return step;
}

/** Takes over the gates and gives branches whose gate has moved a flow to begin with. */
function begin(network: Network, work: Workspace, gate: Float64Array): void {
  const cold = !(work.flow[0]! > 0);
  const { inletCount } = network;
  for (let i = 0; i < network.count; i++) {
    if (inletCount[i] !== 0) continue;
    if (!cold && gate[i] === work.gate[i]) continue;
    work.gate[i] = gate[i]!;
    guessBranch(network, work, i);
  }
}

/** Draws the last known suction at the end of a branch through all its sections in a row. */
function guessBranch(network: Network, work: Workspace, openEnd: number): void {
  const { parent, inletCount, dynamic, fixed, frictional } = network;
  let resistance = 0;
  let last = openEnd;
  for (let i = openEnd; ; i = parent[i]!) {
    const coefficient = fixed[i]! + work.gate[i]! + USUAL_FRICTION * frictional[i]!;
    resistance += coefficient * dynamic[i]!;
    last = i;
    if (i === 0 || inletCount[parent[i]!]! > 1) break;
  }
  const suction = work.suction[last]! > 0 ? work.suction[last]! : USUAL_SUCTION;
  const flow = Math.sqrt(suction / resistance);
  for (let i = openEnd; ; i = parent[i]!) {
    work.flow[i] = flow;
    if (i === last) break;
  }
}
