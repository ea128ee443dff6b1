// What the solver says of one state of the gates, in the shop's ids and names. Plain data, ready to
// be drawn, printed or written as JSON. Pressures are relative to the room.

import { velocityPressure } from '../air/velocity-pressure.ts';
import { producedPressure } from '../curve/collector-curve.ts';
import { isWithinPoints } from '../curve/entered-range.ts';
import { hoodStaticPressure } from '../duct/hood.ts';
import { type Balance, balance } from '../solve/balance.ts';
import type { Crossing } from '../solve/crossings.ts';
import { BALANCED, difficultyWords, NOTHING_OPEN } from './difficulty-words.ts';
import type { Travels } from './gate-state.ts';
import { type DropNumbers, gateCoefficients } from './network-of.ts';
import { type SectionReport, sectionStates } from './section-states.ts';
import type { ShopModel } from './shop-model.ts';
import { type Verdict, verdictOn } from './verdict.ts';

/** Where the collector's curve meets the ducts. */
export interface OperatingPoint {
  /** Flow at the flange [m³/s] */
  readonly flow: number;
  /** Total suction at the flange, after separator and filter: what the ducts lose [Pa] */
  readonly suction: number;
  /** What the entered curve gives at that flow, before separator and filter [Pa] */
  readonly produced: number;
  /** Whether the flow comes back by itself after a disturbance. */
  readonly stable: boolean;
  /** False where the curve is only the straight continuation of the entered points. */
  readonly withinPoints: boolean;
}

/** A drop in one state. */
export interface DropReport {
  readonly id: string;
  readonly name: string;
  /** How far its gate is pulled out, 1 without a gate [-] */
  readonly travel: number;
  /** Flow into it; the leak when shut [m³/s] */
  readonly flow: number;
  /** Mean speed in its own section [m/s] */
  readonly velocity: number;
  /** What a manometer shows just behind the hood, as positive suction [Pa] */
  readonly hoodStaticPressure: number;
  /** Flow that catches the dust, null if nobody said [m³/s] */
  readonly need: number | null;
  readonly verdict: Verdict;
  /** Section with the lowest speed on the way to the collector, and that speed [m/s] */
  readonly slowest: { readonly section: string; readonly velocity: number };
}

/** One state of the gates. */
export interface StateReport {
  /** Ids of the drops that are open, in the order of the document. */
  readonly open: readonly string[];
  /** 'balanced', or the first difficulty. */
  readonly outcome: string;
  readonly difficulties: readonly string[];
  /** Null where the collector gives no suction. */
  readonly operatingPoint: OperatingPoint | null;
  readonly crossings: readonly Crossing[];
  readonly drops: readonly DropReport[];
  readonly sections: readonly SectionReport[];
  /** Worst gap in mass or pressure, as a fraction; null without an operating point [-] */
  readonly residual: number | null;
}

/**
 * Balances a shop for one state of its gates and says what comes of it.
 *
 * @param model - the shop, ready to be balanced
 * @param travels - travel of each drop's gate, in the order of the drops [-]
 * @returns the report
 */
export function stateReport(model: ShopModel, travels: Travels): StateReport {
  const { ducts, sectionIds } = model;
  const gates = gateCoefficients(ducts, travels);
  const result = balance(ducts.network, model.work, gates, model.curve);
  const states = sectionStates(ducts, result, model.air.density, sectionIds);
  const open = ducts.drops.filter((_, i) => travels[i]! > 0).map(({ id }) => id);
  const difficulties = [
    ...(open.length === 0 ? [NOTHING_OPEN] : []),
    ...result.difficulties.map((difficulty) => difficultyWords(difficulty, sectionIds)),
  ];
  return {
    open,
    outcome: difficulties[0] ?? BALANCED,
    difficulties,
    operatingPoint: operatingPoint(model, result),
    crossings: result.crossings,
    drops: ducts.drops.map((drop, i) => dropReport(model, drop, travels[i]!, states)),
    sections: states,
    residual: result.point === undefined ? null : result.residual.worst,
  };
}

function operatingPoint({ curve }: ShopModel, { point }: Balance): OperatingPoint | null {
  if (point === undefined) return null;
  const { flow, suction, stable } = point;
  const produced = producedPressure(curve, flow);
  return { flow, suction, produced, stable, withinPoints: isWithinPoints(curve, flow) };
}

function dropReport(
  model: ShopModel,
  drop: DropNumbers,
  travel: number,
  states: readonly SectionReport[],
): DropReport {
  const own = states[drop.way[0]!]!;
  let slowest = drop.way[0]!;
  for (const at of drop.way) {
    if (states[at]!.velocity < states[slowest]!.velocity) slowest = at;
  }
  const { flow, velocity } = own;
  const portVelocity = flow / ((Math.PI / 4) * drop.port ** 2);
  const portPressure = velocityPressure(model.air.density, portVelocity);
  const lowest = states[slowest]!.velocity;
  return {
    id: drop.id,
    name: drop.name,
    travel,
    flow,
    velocity,
    hoodStaticPressure: hoodStaticPressure(drop.entryLoss, portPressure),
    need: drop.need ?? null,
    verdict: verdictOn(
      { open: travel > 0, flow, need: drop.need, velocity, slowest: lowest },
      model.carryingRange,
    ),
    slowest: { section: model.sectionIds[slowest]!, velocity: lowest },
  };
}
