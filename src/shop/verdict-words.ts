// The verdict on a drop with the number that it turns on, for a table or a row.

import { formatQuantity } from '../units/format.ts';
import type { UnitSystem } from '../units/quantity.ts';
import type { Shop } from './schema/shop-schema.ts';
import { sectionLabelInside } from './section-label.ts';
import type { DropReport } from './state-report.ts';

/**
 * The verdict on a drop in words.
 *
 * @param shop - the shop that was balanced
 * @param drop - the drop in one state of the gates
 * @param system - the units to speak in
 * @returns such as 'settles: 2,310 ft/min in the main by the door'
 */
export function verdictWords(
  shop: Pick<Shop, 'sections'>,
  drop: DropReport,
  system: UnitSystem,
): string {
  switch (drop.verdict) {
    case 'shut':
    case 'carries':
      return drop.verdict;
    case 'settles': {
      const { section, velocity } = drop.slowest;
      const label = shop.sections.find(({ id }) => id === section) ?? { id: section };
      const speed = formatQuantity('velocity', system, velocity).text;
      return `settles: ${speed} in ${sectionLabelInside(label)}`;
    }
    case 'short':
      return `short: ${formatQuantity('flow', system, drop.need ?? 0).text} needed`;
    case 'tight':
      return `tight: ${formatQuantity('velocity', system, drop.velocity).text} in its own pipe`;
  }
}
