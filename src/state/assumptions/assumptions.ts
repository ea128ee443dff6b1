// Everything that the answer rests on, group by group.

import type { Air } from '../../air/air.ts';
import type { Shop } from '../../shop/schema/shop-schema.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { assumedAir, assumedCollector } from './air-and-collector.ts';
import type { AssumptionGroup } from './assumption.ts';
import { assumedHoods, assumedNeeds } from './drops.ts';
import { assumedFittings, assumedPipes } from './ducts.ts';

/**
 * What is assumed of a shop.
 *
 * @param shop - the shop
 * @param air - its air
 * @param system - the units to speak in
 * @returns the groups, in the order that the air flows, judgement last
 */
export function assumptions(shop: Shop, air: Air, system: UnitSystem): AssumptionGroup[] {
  return [
    { heading: 'Hoods and gates', rows: assumedHoods(shop.drops, system) },
    { heading: 'Pipes and hoses', rows: assumedPipes(shop.sections, system) },
    { heading: 'Fittings and wyes', rows: assumedFittings(shop.sections) },
    { heading: 'Collector', rows: assumedCollector(shop.collector, system) },
    { heading: 'Air', rows: assumedAir(shop, air, system) },
    { heading: 'What it is judged by', rows: assumedNeeds(shop, system) },
  ];
}
