// The verdict on a drop with the number that it turns on, for a table or a row.

import { formatQuantity } from '../units/format.ts';
import type { UnitSystem } from '../units/quantity.ts';
import type { Shop } from './schema/shop-schema.ts';
import { besideLimit } from './near-limit.ts';
import { pipeWord } from './pipe-of.ts';
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
  shop: Pick<Shop, 'sections' | 'drops' | 'carryingRange'>,
  drop: DropReport,
  system: UnitSystem,
): string {
  const { verdict, need, velocity, slowest } = drop;
  if (verdict === 'settles') {
    const section = shop.sections.find(({ id }) => id === slowest.section);
    const place = sectionLabelInside(section ?? { id: slowest.section });
    const speed = besideLimit('velocity', system, slowest.velocity, shop.carryingRange.low);
    return `settles: ${speed} in ${place}`;
  }
  if (verdict === 'short' && need !== null) {
    return `short: ${formatQuantity('flow', system, need).text} needed`;
  }
  if (verdict === 'tight') {
    const speed = besideLimit('velocity', system, velocity, shop.carryingRange.high);
    return `tight: ${speed} in its own ${ownPipeWord(shop, drop)}`;
  }
  return verdict;
}

/**
 * What a drop's own section is made of.
 *
 * @param shop - the shop that was balanced
 * @param drop - the drop
 * @returns 'pipe' or 'hose'
 */
export function ownPipeWord(
  shop: Pick<Shop, 'sections' | 'drops'>,
  drop: Pick<DropReport, 'id'>,
): 'pipe' | 'hose' {
  const into = shop.drops.find(({ id }) => id === drop.id)?.into;
  const section = shop.sections.find(({ id }) => id === into);
  return section === undefined ? 'pipe' : pipeWord(section.pipe);
}
