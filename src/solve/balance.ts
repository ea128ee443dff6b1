// The operating point of one gate state, with everything that has to be said about it.
// The quick way is Newton from the last state; where the curve may be met more than once, or the
// quick way did not end, the flow at the flange is bracketed and every crossing is looked for.

import { availableSuction, type CollectorCurve } from '../curve/collector-curve.ts';
import { enteredRange } from '../curve/entered-range.ts';
import { peakFlow } from '../curve/peak-flow.ts';
import { allCrossings, type Crossing, isOnlyCrossing } from './crossings.ts';
import { type Losses, lossesAt, type Residual, residualOf } from './losses.ts';
import type { Network } from './network.ts';
import { inInputOrder, inNetworkOrder } from './section-order.ts';
import { settle, settleAtFlow } from './settle.ts';
import type { Workspace } from './workspace.ts';

/** A balance that closes worse than this, as a fraction, is none [-]. */
export const CLOSING = 1e-9;

/** What has to be said beside a balance, or instead of one. */
export type Difficulty =
  | { readonly kind: 'curve ends'; readonly side: 'above' | 'below' }
  | { readonly kind: 'several crossings' }
  | { readonly kind: 'left of the peak' }
  | { readonly kind: 'no suction' }
  | { readonly kind: 'did not balance'; readonly section: number };

export interface Balance {
  /** Empty when all is well; the gravest first. */
  readonly difficulties: readonly Difficulty[];
  /** The crossing that the rest describes: the stable one with the most flow. */
  readonly point: Crossing | undefined;
  /** All crossings by rising flow. */
  readonly crossings: readonly Crossing[];
  /** Flow in each section, in the order of the input, 0 without a point [m³/s], shape (sections). */
  readonly flow: Float64Array;
  /** Losses of each section and wye, in the order of the input [Pa], shape (sections). */
  readonly losses: Losses;
  /** How well it closes, or what was tried last did; its section is a place in the input. */
  readonly residual: Residual;
}

/**
 * Balances a network against a collector for one state of the gates.
 * @param network - the network
 * @param work - its workspace; the state balanced last is where this one begins
 * @param gates - loss coefficient of each section's gate, in the order of the input [-], (sections)
 * @param curve - the collector
 * @returns the balance; when it has a point and no 'did not balance', it closes to {@link CLOSING}
 */
export function balance(
  network: Network,
  work: Workspace,
  gates: Float64Array,
  curve: CollectorCurve,
): Balance {
  const gate = inNetworkOrder(network, gates);
  const crossings = findCrossings(network, work, gate, curve);
  const point = crossings.findLast((crossing) => crossing.stable) ?? crossings.at(-1);
  const tried = lossesAt(network, gate, work.flow);
  const suction = point?.suction ?? meanSuction(tried, work.flow);
  const residual = residualOf(network, tried, work.flow, suction);
  const worst = { ...residual, section: network.order[residual.section]! };
  if (!point) work.flow.fill(0);
  const losses = point ? tried : lossesAt(network, gate, work.flow);
  return {
    difficulties: difficultiesOf(curve, crossings, point, worst),
    point,
    crossings,
    flow: inInputOrder(network, work.flow),
    losses: {
      section: inInputOrder(network, losses.section),
      join: inInputOrder(network, losses.join),
    },
    residual: worst,
  };
}

/**
 * All crossings of one state of the gates, for searches that need no more than flows.
 * @param network - the network
 * @param work - its workspace; left at the crossing that counts, the stable one with the most flow,
 *   or where the quick way got stuck
 * @param gate - loss coefficient of the gate in each section, in the network's order [-], (sections)
 * @param curve - the collector
 * @returns the crossings by rising flow; none where there is no operating point
 */
export function findCrossings(
  network: Network,
  work: Workspace,
  gate: Float64Array,
  curve: CollectorCurve,
): Crossing[] {
  if (settle(network, work, gate, curve) > 0) {
    const flow = work.flow[0]!;
    const suction = availableSuction(curve, flow);
    if (suction > 0 && isOnlyCrossing(curve, flow)) return [{ flow, suction, stable: true }];
  }
  work.flow.fill(0);
  const crossings = allCrossings(network, work, gate, curve);
  const point = crossings.findLast((crossing) => crossing.stable) ?? crossings.at(-1);
  if (point) settleAtFlow(network, work, gate, point.flow);
  else settle(network, work, gate, curve);
  return crossings;
}

function difficultiesOf(
  curve: CollectorCurve,
  crossings: readonly Crossing[],
  point: Crossing | undefined,
  residual: Residual,
): Difficulty[] {
  if (!point) {
    return availableSuction(curve, 0) > 0
      ? [{ kind: 'did not balance', section: residual.section }]
      : [{ kind: 'no suction' }];
  }
  const found: Difficulty[] = [];
  if (!(residual.worst <= CLOSING)) {
    found.push({ kind: 'did not balance', section: residual.section });
  }
  if (crossings.length > 1) found.push({ kind: 'several crossings' });
  const entered = enteredRange(curve);
  if (point.flow > entered.high) found.push({ kind: 'curve ends', side: 'above' });
  if (point.flow < entered.low) found.push({ kind: 'curve ends', side: 'below' });
  if (point.flow < peakFlow(curve)) found.push({ kind: 'left of the peak' });
  return found;
}

/** What the air overcomes on the mean, by its power: all loss × flow over the whole flow [Pa]. */
function meanSuction({ section, join }: Losses, flow: Float64Array): number {
  let power = 0;
  for (let i = 0; i < flow.length; i++) power += flow[i]! * (section[i]! + join[i]!);
  return power / flow[0]!;
}
