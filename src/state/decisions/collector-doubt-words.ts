// How sure the comparison of collectors is, in words.

import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { ToldCollector } from './told-doubt.ts';
import type { CollectorRow } from '../../shop/decisions/collectors.ts';
import { casesWords } from '../../shop/decisions/doubt-words.ts';

/**
 * How sure it is which one serves the most.
 *
 * @param rows - the collectors
 * @param doubts - what came of all cases, in the same order
 * @returns a sentence on the one that serves the most; empty where there is none
 */
export function collectorDoubtWords(
  rows: readonly CollectorRow[],
  doubts: readonly ToldCollector[],
): string {
  const best = rows
    .map((row, i) => ({ row, doubt: doubts[i] }))
    .toSorted(
      (a, b) => b.row.served - a.row.served || (b.doubt?.best ?? 0) - (a.doubt?.best ?? 0),
    )[0];
  if (best?.doubt === undefined) return '';
  const { low, high } = best.doubt.served;
  const count = low === high ? `${Math.round(low)}` : `${Math.round(low)} to ${Math.round(high)}`;
  return `With everything a little off, ${best.row.name} serves ${count} drops in 9 of 10 cases, and ${casesWords(best.doubt.best)} none of the others serves more.`;
}

/** Between which values something lies [SI]. */
interface Between {
  readonly low: number;
  readonly high: number;
}

/**
 * Where an operating point may lie.
 *
 * @param doubt - between which flows
 * @param system - the units to speak in
 * @returns such as "620 to 700 cfm in 9 of 10 cases"
 */
export function pointDoubtWords({ flow }: { readonly flow: Between }, system: UnitSystem): string {
  const { low, high } = flow;
  return `${formatQuantity('flow', system, low).number} to ${formatQuantity('flow', system, high).text} in 9 of 10 cases`;
}
