// What the motor has to deliver: in one state of the gates, and in the worst of those that the shop is
// judged by, with its name. In words first.

import { type ShaftPower, shaftPower } from '../curve/shaft-power.ts';
import { unitCount } from '../curve/arrangement.ts';
import { formatQuantity } from '../units/format.ts';
import type { UnitSystem } from '../units/quantity.ts';
import { createWorkspace } from '../solve/workspace.ts';
import { type NamedState, travelsWhenOpen, usualStates } from './gate-state.ts';
import { besideLimit } from './near-limit.ts';
import type { Shop } from './schema/shop-schema.ts';
import type { ShopModel } from './shop-model.ts';
import { type StateReport, stateReport } from './state-report.ts';

/** A power that is more by less than this part of it is the same. */
const LEAST_MORE = 0.005;

/** The motor in one state of the gates. */
export type MotorLoad =
  | {
      readonly kind: 'known';
      /** Shaft power of one motor [W] */
      readonly power: number;
      /** How many motors there are [-] */
      readonly motors: number;
      /** Rated shaft power of one, null if nobody said [W] */
      readonly nameplate: number | null;
      /** Power over nameplate, null without one; above 1 it is overloaded [-] */
      readonly load: number | null;
      /** False where the points that it rests on had to be continued. */
      readonly withinPoints: boolean;
    }
  | {
      readonly kind: 'unknown';
      readonly reason: 'not entered' | 'no pressure at this flow' | 'no operating point';
    };

/** A state of the gates and the motor in it. */
export interface NamedLoad {
  readonly state: NamedState;
  readonly motor: Extract<MotorLoad, { kind: 'known' }>;
}

/**
 * The motor at the operating point of a state.
 *
 * @param shop - the shop that was balanced
 * @param model - the same, ready to be balanced; its air counts
 * @param report - one state of its gates
 * @returns power [W] and load [-] of each motor, or why they are not known
 */
export function motorLoad(
  shop: Pick<Shop, 'collector'>,
  model: Pick<ShopModel, 'air'>,
  report: Pick<StateReport, 'operatingPoint'>,
): MotorLoad {
  const { operatingPoint } = report;
  if (operatingPoint === null) return { kind: 'unknown', reason: 'no operating point' };
  return perMotor(shop, shaftPower(shop.collector, model.air, operatingPoint.flow));
}

/**
 * The state that loads the motor most, of every drop alone and every saved gate set.
 *
 * @param shop - the shop
 * @param model - the same, ready to be balanced
 * @returns the state and the motor in it; undefined where no state has a known power
 */
export function worstMotorLoad(shop: Shop, model: ShopModel): NamedLoad | undefined {
  // A workspace of its own, so that the caller's still begins where its gates stood last.
  const apart = { ...model, work: createWorkspace(model.ducts.network) };
  const loads = usualStates(shop).flatMap((state) => {
    const report = stateReport(apart, travelsWhenOpen(shop.drops, state.open));
    const motor = motorLoad(shop, model, report);
    return motor.kind === 'known' ? [{ state, motor }] : [];
  });
  const [first, ...rest] = loads;
  if (first === undefined) return undefined;
  return rest.reduce((most, each) => (each.motor.power > most.motor.power ? each : most), first);
}

/**
 * The motor in words, now and in the worst state, with a warning above the nameplate.
 *
 * @param now - the motor in the present state
 * @param worst - the state that loads it most, if any is known
 * @param system - the units to speak in
 * @returns one or two sentences; what is missing where nothing is known
 */
export function motorSentence(
  now: MotorLoad,
  worst: NamedLoad | undefined,
  system: UnitSystem,
): string {
  const head = now.kind === 'known' ? `${presentWords(now, system)}.` : unknownWords(now.reason);
  return [head, ...worstWords(now, worst, system)].join(' ');
}

function perMotor({ collector }: Pick<Shop, 'collector'>, shaft: ShaftPower): MotorLoad {
  if (shaft.kind === 'unknown') return shaft;
  const motors = unitCount(collector.arrangement);
  return {
    kind: 'known',
    power: shaft.power / motors,
    motors,
    nameplate: collector.curve.nameplate ?? null,
    load: shaft.load ?? null,
    withinPoints: shaft.withinPoints,
  };
}

type Known = Extract<MotorLoad, { kind: 'known' }>;

function presentWords(motor: Known, system: UnitSystem): string {
  const who = motor.motors === 1 ? 'The motor delivers' : `Each of ${motor.motors} motors delivers`;
  const guess = motor.withinPoints ? '' : ', a guess beyond the entered points';
  return `${who} ${amount(motor, system)}${overloaded(motor)}${guess}`;
}

function overloaded({ load }: Known): string {
  return load !== null && load > 1 ? ': it is overloaded and may trip or burn out' : '';
}

/** Power beside the nameplate, so that a motor just over it doesn't read as if it were on it. */
function amount({ power, nameplate }: Known, system: UnitSystem): string {
  if (nameplate === null) return formatQuantity('power', system, power).text;
  const rated = formatQuantity('power', system, nameplate).text;
  const part = formatQuantity('fraction', system, power / nameplate).text;
  return `${besideLimit('power', system, power, nameplate)}, ${part} of its ${rated}`;
}

function worstWords(now: MotorLoad, worst: NamedLoad | undefined, system: UnitSystem): string[] {
  if (worst === undefined) return [];
  const { state, motor } = worst;
  // The same state, or one that loads it more than any saved one.
  if (now.kind === 'known' && motor.power <= (1 + LEAST_MORE) * now.power) return [];
  const which = state.kind === 'alone' ? `${state.name} alone open` : `“${state.name}” open`;
  const most = `Most of all with ${which}: ${amount(motor, system)}`;
  return [`${most}${overloaded(motor)}.`];
}

function unknownWords(reason: Extract<MotorLoad, { kind: 'unknown' }>['reason']): string {
  switch (reason) {
    case 'not entered':
      return 'The motor’s load is not known: enter power points or an efficiency.';
    case 'no pressure at this flow':
      return 'The motor’s load is not known: the points give no pressure at this flow.';
    case 'no operating point':
      return 'The motor’s load is not known without an operating point.';
    default:
      return reason satisfies never;
  }
}
