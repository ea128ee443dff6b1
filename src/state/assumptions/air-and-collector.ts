// What is assumed of the air in the shop and of the collector.
//
// 1. Density of moist air: the relations of ASHRAE Fundamentals as PsychroLib computes them.
// 2. Viscosity: Sutherland's law with the constants of the US Standard Atmosphere, 1976.

import type { Air } from '../../air/air.ts';
import type { Collector } from '../../shop/schema/collector-schema.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import { formatQuantity } from '../../units/format.ts';
import type { Quantity, UnitSystem } from '../../units/quantity.ts';
import { type Assumption, entered, sourced } from './assumption.ts';

/**
 * What is assumed of the air.
 *
 * @param shop - the shop
 * @param air - its air
 * @param system - the units to speak in
 * @returns rows to show
 */
export function assumedAir(shop: Pick<Shop, 'air'>, air: Air, system: UnitSystem): Assumption[] {
  const show = (quantity: Quantity, si: number) => formatQuantity(quantity, system, si).text;
  const density = show('density', air.density);
  if (shop.air.kind === 'plain') return [entered('Density of the air', density)];
  const { altitude, temperature, humidity } = shop.air;
  const room = [
    show('altitude', altitude),
    show('temperature', temperature),
    `${show('fraction', humidity)} humidity`,
  ];
  return [
    entered('The shop', room.join(', ')),
    sourced('Density of its air', density, {
      citation: 'Moist-air relations of ASHRAE Fundamentals, by PsychroLib',
      status: 'verified',
    }),
    sourced('Viscosity', show('viscosity', air.viscosity), {
      citation: 'Sutherland’s law, US Standard Atmosphere, 1976',
      status: 'verified',
    }),
  ];
}

/**
 * What is assumed of the collector.
 *
 * @param collector - the collector of the shop
 * @param system - the units to speak in
 * @returns rows to show
 */
export function assumedCollector(collector: Collector, system: UnitSystem): Assumption[] {
  const { curve, speedRatio = 1, wheelRatio = 1, filter, separator } = collector;
  const show = (quantity: Quantity, si: number) => formatQuantity(quantity, system, si).text;
  const rows = [
    entered(`${curve.name}: ${curve.points.length} points`, BASIS_WORDS[curve.basis.kind]),
    entered('Its points hold in air of', show('density', curve.density)),
  ];
  if (speedRatio !== 1)
    rows.push(entered('Runs at', `${show('fraction', speedRatio)} of its speed`));
  if (wheelRatio !== 1) rows.push(entered('Wheel', `${show('fraction', wheelRatio)} of its size`));
  rows.push(entered('Filter', filterWords(filter, curve.includes.filter)));
  if (curve.includes.separator) rows.push(entered('Separator', 'in the points'));
  else if (separator.kind === 'none') rows.push(entered('Separator', 'none'));
  else rows.push(entered('Separator', `K ${show('coefficient', separator.coefficient)}`));
  return rows;
}

const BASIS_WORDS = {
  'fan-static': 'fan static pressure, as rated',
  tap: 'suction at a tap in the inlet pipe',
  total: 'total suction at the inlet',
} as const;

function filterWords(filter: Collector['filter'], included: boolean): string {
  if (filter.kind === 'none') return included ? 'clean, in the points' : 'none';
  const { blinding = 1 } = filter;
  const state = blinding === 1 ? 'clean' : `at ${blinding} times its clean resistance`;
  return included ? `${state}; clean, it is in the points` : state;
}
