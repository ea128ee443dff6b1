// What the motor has to deliver now and in other states of the gates, and which of these asks the most
// of it. States are: as now, every set of the shop, every drop alone, and all open.

import { shaftPower, type ShaftPower } from '../../curve/shaft-power.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import type { ShopModel } from '../../shop/shop-model.ts';
import { stateReport } from '../../shop/state-report.ts';
import { createWorkspace } from '../../solve/workspace.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { type GatePositions, positionsWhenOpen, travelsOf } from '../gate-positions.ts';

type KnownPower = Extract<ShaftPower, { kind: 'known' }>;

/** The motor in one state of the gates. */
export interface MotorState {
  /** What is open. */
  readonly name: string;
  readonly power: KnownPower;
}

/** The motor now, and where it has most to do. */
export interface MotorLoad {
  /** Undefined where nothing says it, or where there is no operating point. */
  readonly now: KnownPower | undefined;
  readonly worst: MotorState | undefined;
}

/**
 * The motor's load.
 *
 * @param shop - the shop
 * @param model - the same, ready to be balanced
 * @param gates - as they stand now
 * @returns now and at worst
 */
export function motorLoad(shop: Shop, model: ShopModel, gates: GatePositions): MotorLoad {
  // A workspace of its own: the page's begins where its gates stood last.
  const apart = { ...model, work: createWorkspace(model.ducts.network) };
  const powerAt = (positions: GatePositions): KnownPower | undefined => {
    const point = stateReport(apart, travelsOf(shop.drops, positions)).operatingPoint;
    const power = point && shaftPower(shop.collector, model.air, point.flow);
    return power?.kind === 'known' ? power : undefined;
  };
  const { drops } = shop;
  const states = [
    { name: 'the gates as now', positions: gates },
    ...shop.gateSets.map(({ name, open }) => ({
      name: `“${name}”`,
      positions: positionsWhenOpen(drops, open),
    })),
    ...drops.map(({ id, name }) => ({
      name: `only ${name}`,
      positions: positionsWhenOpen(drops, [id]),
    })),
    {
      name: 'every gate open',
      positions: positionsWhenOpen(
        drops,
        drops.map(({ id }) => id),
      ),
    },
  ];
  const loads = states.flatMap(({ name, positions }): MotorState[] => {
    const power = powerAt(positions);
    return power ? [{ name, power }] : [];
  });
  const worst = loads.toSorted((a, b) => b.power.power - a.power.power)[0];
  return { now: loads.find(({ name }) => name === states[0]!.name)?.power, worst };
}

/**
 * The load in words.
 *
 * @param load - now and at worst
 * @param nameplate - of one motor; undefined where it is not known [W]
 * @param units - the units to speak in
 * @returns one to three sentences; whether the motor is ever asked more than its nameplate
 */
export function motorWords(
  { now, worst }: MotorLoad,
  nameplate: number | undefined,
  units: UnitSystem,
): { readonly text: string; readonly isOver: boolean } {
  if (!now) {
    return {
      text: 'Say an efficiency or power points, and the motor’s load is shown.',
      isOver: false,
    };
  }
  const show = (power: number) => formatQuantity('power', units, power).text;
  const part = (load: number) => formatQuantity('fraction', units, load).text;
  const of = ({ power, load }: KnownPower) =>
    load === undefined ? show(power) : `${show(power)}, ${part(load)} of the nameplate`;
  const most = worst && worst.power.power > now.power * 1.005 ? worst : undefined;
  const isOver = [now, ...(most ? [most.power] : [])].some(({ load = 0 }) => load > 1);
  const sentences = [
    `Now the wheel takes ${of(now)}.`,
    ...(most
      ? [`It takes most with ${most.name}: ${of(most.power)}.`]
      : ['No state of the gates takes more.']),
    ...(isOver
      ? [
          `That is more than the ${show(nameplate ?? 0)} of the nameplate: the motor runs hot and trips. Less air, a smaller wheel or a lower speed takes the load off.`,
        ]
      : []),
    ...(now.withinPoints ? [] : ['The power there is only continued, outside its points.']),
  ];
  return { text: sentences.join(' '), isOver };
}
