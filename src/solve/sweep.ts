// One Newton step of a whole tree in O(sections): up from the open ends to the flange, down again.
// Duct losses grow almost with the square of the flow, so the step is taken in the square root of
// the suction at a wye, y = √X, which is almost straight in every inlet's flow: where friction is
// constant and wyes are plain one step from anywhere is exact. For inlet j of a wye
//     y = y_j + y_j'·δ_j + e_j·δ,     Σ(Q_j + δ_j) = Q + δ,
// which gives y and every δ_j as straight lines in the step δ of the flow below the wye.

import type { CollectorCurve } from '../curve/collector-curve.ts';
import { LAMINAR_END, tabulatedFriction } from './friction-table.ts';
import type { Network } from './network.ts';

/** While flows are far from balanced √X may have no value; this part of what it could be stands in. */
const LEAST_SHARE = 1e-3;

/** What a balance works on; kept from one gate state to the next it makes a warm start. */
export interface Workspace {
  /** Loss coefficient of the gate in each section [-], shape (sections). */
  readonly gate: Float64Array;
  /** Flow [m³/s], shape (sections). */
  readonly flow: Float64Array;
  /** Total suction at the downstream end of each section [Pa], shape (sections). */
  readonly suction: Float64Array;
  /** Slope of that suction in the section's flow [Pa·s/m³], shape (sections). */
  readonly slope: Float64Array;
  /** √X of an inlet [Pa^½], and at a wye what is common to its inlets, at δ = 0 and per δ. */
  readonly head: Float64Array;
  readonly headLevel: Float64Array;
  readonly headRise: Float64Array;
  /** 1/y_j' [m³/s/Pa^½] and e_j·1/y_j' [-] of each inlet, shape (sections). */
  readonly give: Float64Array;
  readonly drag: Float64Array;
  /** Step of each section's flow [m³/s], shape (sections). */
  readonly step: Float64Array;
  /** Friction factor and slope of the section at hand. */
  readonly friction: Float64Array;
}

/**
 * Makes an empty workspace.
 * @param network - the network that it is for
 * @returns a workspace with all flows 0
 */
export function createWorkspace(network: Network): Workspace {
  const column = () => new Float64Array(network.count);
  return {
    gate: column(),
    flow: column(),
    suction: column(),
    slope: column(),
    head: column(),
    headLevel: column(),
    headRise: column(),
    give: column(),
    drag: column(),
    step: column(),
    friction: new Float64Array(2),
  };
}

/**
 * Goes from the open ends to the flange and leaves suction and slope of every section. Flows below
 * the open ends are set to the sum of what enters.
 * @param network - the network
 * @param work - flows at the open ends in, everything else out
 */
export function sweepUp(network: Network, work: Workspace): void {
  const { firstInlet, inletCount, dynamic, reynolds, frictional, fixed, friction: table } = network;
  const { gate, flow, suction, slope, friction } = work;
  for (let i = network.count - 1; i >= 0; i--) {
    const inlets = inletCount[i]!;
    let p = 0;
    let dp = 0;
    if (inlets > 0) {
      if (inlets === 1) takeOver(work, i, firstInlet[i]!);
      else joinInlets(network, work, i);
      p = suction[i]!;
      dp = slope[i]!;
    }
    const q = flow[i]!;
    const vp = dynamic[i]! * q;
    const re = reynolds[i]! * q;
    const multiple = frictional[i]!;
    let k = fixed[i]! + gate[i]!;
    if (re > LAMINAR_END) {
      tabulatedFriction(table, i, re, friction);
      k += friction[0]! * multiple;
      dp += vp * (2 * k + friction[1]! * multiple * re);
    } else {
      const laminar = (64 * multiple * dynamic[i]!) / reynolds[i]!;
      p += laminar * q;
      dp += laminar + 2 * k * vp;
    }
    suction[i] = p + k * vp * q;
    slope[i] = dp;
  }
}

function takeOver(work: Workspace, section: number, inlet: number): void {
  work.flow[section] = work.flow[inlet]!;
  work.suction[section] = work.suction[inlet]!;
  work.slope[section] = work.slope[inlet]!;
}

/** Brings the inlets of a wye to one head and leaves flow, suction and its slope below the wye. */
function joinInlets(network: Network, work: Workspace, wye: number): void {
  const { own, combined, cross } = network;
  const { flow, suction, slope, head, give, drag, headLevel, headRise } = work;
  const first = network.firstInlet[wye]!;
  const end = first + network.inletCount[wye]!;
  let total = 0;
  for (let j = first; j < end; j++) total += flow[j]!;
  flow[wye] = total;
  let gives = 0;
  let drags = 0;
  let weighted = 0;
  for (let j = first; j < end; j++) {
    const onOwn = own[j]! * flow[j]!;
    const onCombined = combined[j]! * total;
    const x = suction[j]! + onOwn * flow[j]! + onCombined * total;
    const floor = LEAST_SHARE * slope[j]! * flow[j]!;
    const y = Math.sqrt(x > floor ? x : floor);
    const inverse = (2 * y) / (slope[j]! + 2 * onOwn);
    head[j] = y;
    give[j] = inverse;
    drag[j] = (onCombined * inverse) / y;
    gives += inverse;
    drags += drag[j]!;
    weighted += y * inverse;
  }
  const level = weighted / gives;
  const rise = (1 + drags) / gives;
  let p = level * level;
  let dp = 2 * level * rise;
  for (let j = first; j < end; j++) {
    if (cross[j] === 0) continue;
    const q = flow[j]! + (level - head[j]!) * give[j]!;
    const size = Math.abs(q);
    p += cross[j]! * size * q;
    dp += 2 * cross[j]! * size * (rise * give[j]! - drag[j]!);
  }
  suction[wye] = p;
  slope[wye] = dp;
  headLevel[wye] = level;
  headRise[wye] = rise;
}

/**
 * Goes from the flange to the open ends and moves every flow by its step. A flow that would turn
 * round is taken to a tenth of itself instead: air enters at every open end.
 * @param network - the network
 * @param work - as {@link sweepUp} left it; flows are moved
 * @param rootStep - step of the flow at the flange [m³/s]
 * @returns the largest step as a fraction of its flow [-]
 */
export function sweepDown(network: Network, work: Workspace, rootStep: number): number {
  const { firstInlet, inletCount } = network;
  const { flow, head, headLevel, headRise, give, drag, step } = work;
  let largest = move(flow, step, 0, rootStep);
  for (let i = 0; i < network.count; i++) {
    const inlets = inletCount[i]!;
    if (inlets === 0) continue;
    const first = firstInlet[i]!;
    if (inlets === 1) {
      flow[first] = flow[i]!;
      step[first] = step[i]!;
      continue;
    }
    const y = headLevel[i]! + headRise[i]! * step[i]!;
    for (let j = first; j < first + inlets; j++) {
      const relative = move(flow, step, j, (y - head[j]!) * give[j]! - drag[j]! * step[i]!);
      if (relative > largest) largest = relative;
    }
  }
  return largest;
}

function move(flow: Float64Array, step: Float64Array, section: number, wanted: number): number {
  const before = flow[section]!;
  const after = before + wanted;
  if (after > 0) {
    flow[section] = after;
    step[section] = wanted;
    return Math.abs(wanted) / after;
  }
  flow[section] = before / 10;
  step[section] = flow[section]! - before;
  return 1;
}
