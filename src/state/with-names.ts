// A report with the names that the drops bear now: names may change without anything being solved.

import type { Shop } from '../shop/schema/shop-schema.ts';
import type { StateReport } from '../shop/state-report.ts';

/**
 * Puts the present names on a report.
 *
 * @param report - one state of the gates
 * @param shop - the shop, with the same drops in the same order
 * @returns the report, the very same one if no name has changed
 */
export function withNames(report: StateReport, shop: Pick<Shop, 'drops'>): StateReport {
  if (report.drops.every(({ name }, i) => name === shop.drops[i]?.name)) return report;
  return {
    ...report,
    drops: report.drops.map((drop, i) => ({ ...drop, name: shop.drops[i]?.name ?? drop.name })),
  };
}
