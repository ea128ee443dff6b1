// Flow, speed and pressures of every section at a balance, read from the flange outwards.

import { velocityPressure } from '../air/velocity-pressure.ts';
import type { Balance } from '../solve/balance.ts';
import type { ShopNetwork } from './network-of.ts';

/** A section at a balance. Pressures are those at its downstream end, before it joins the next. */
export interface SectionReport {
  readonly id: string;
  /** Flow [m³/s] */
  readonly flow: number;
  /** Mean speed [m/s] */
  readonly velocity: number;
  /** Total pressure lost from its upstream to its downstream end, hood and gate included [Pa] */
  readonly loss: number;
  /** Lost in the wye or change of diameter it empties through; negative where pumped [Pa] */
  readonly joinLoss: number;
  /** What a tap in the wall shows, relative to the room; negative under suction [Pa] */
  readonly staticPressure: number;
  /** Static plus velocity pressure [Pa] */
  readonly totalPressure: number;
}

/**
 * The state of every section. Where there is no operating point nothing moves and all is 0.
 *
 * @param ducts - the ducts of a shop
 * @param result - a balance of their network
 * @param density - density of the air [kg/m³]
 * @param ids - ids of the sections, in the order of the document
 * @returns states in the order of the document, shape (sections)
 */
export function sectionStates(
  ducts: ShopNetwork,
  result: Balance,
  density: number,
  ids: readonly string[],
): readonly SectionReport[] {
  const { order } = ducts.network;
  const { point, losses } = result;
  const still = point === undefined;
  const states: SectionReport[] = [];
  for (const i of order) {
    const { pipe, change } = ducts.sections[i]!;
    const flow = still ? 0 : result.flow[i]!;
    const velocity = flow / ((Math.PI / 4) * pipe.diameter ** 2);
    const pressure = velocityPressure(density, velocity);
    const changeLoss = change * pressure * Math.sign(flow);
    const loss = still ? 0 : losses.section[i]! - changeLoss;
    const joinLoss = still ? 0 : losses.join[i]! + changeLoss;
    const next = states[ducts.tree.into[i]!];
    const after = next === undefined ? -(point?.suction ?? 0) : next.totalPressure + next.loss;
    const totalPressure = after + joinLoss;
    states[i] = {
      id: ids[i]!,
      flow,
      velocity,
      loss,
      joinLoss,
      staticPressure: totalPressure - pressure,
      totalPressure,
    };
  }
  return states;
}
