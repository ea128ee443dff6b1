// Air, filter and carrying range in one line, for when their part of the page is folded.

import { blindingOf } from '../curve/filter-resistance.ts';
import type { Shop } from '../shop/schema/shop-schema.ts';
import { formatQuantity } from '../units/format.ts';
import type { Quantity, UnitSystem } from '../units/quantity.ts';
import { blindingText } from './collector/collector-figures.ts';

/**
 * The conditions of a shop.
 *
 * @param shop - the shop
 * @param system - the units to speak in
 * @returns '1,100 m above the sea, 18 °C, 45 % humidity · filter 1.5 times clean · carries 17.8 to 22.9 m/s'
 */
export function conditionsFigures(
  { air, collector, carryingRange }: Pick<Shop, 'air' | 'collector' | 'carryingRange'>,
  system: UnitSystem,
): string {
  const show = (quantity: Quantity, si: number) => formatQuantity(quantity, system, si);
  const room =
    air.kind === 'plain'
      ? `air of ${show('density', air.density).text}`
      : [
          `${show('altitude', air.altitude).text} above the sea`,
          show('temperature', air.temperature).text,
          `${show('fraction', air.humidity).text} humidity`,
        ].join(', ');
  const filter =
    collector.filter.kind === 'none'
      ? []
      : [`filter ${blindingText(blindingOf(collector.filter))}`];
  const low = show('velocity', carryingRange.low).number;
  const high = show('velocity', carryingRange.high).text;
  return [room, ...filter, `chips carried from ${low} to ${high}`].join(' · ');
}
