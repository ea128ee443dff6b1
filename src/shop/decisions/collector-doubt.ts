// How sure the comparison of collectors is.

import { collectorCurve } from '../../curve/collector-curve.ts';
import type { Study } from '../../study/progress.ts';
import { usualStates } from '../gate-state.ts';
import type { Collector } from '../schema/collector-schema.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { airOf } from '../shop-air.ts';
import { type Band, bandOf } from './band.ts';
import { type DoubtOptions, doubtStudy, type StateDoubt } from './doubt.ts';
import { isServed } from './solved-states.ts';

/** One collector, doubted. */
export interface CollectorDoubt {
  readonly states: readonly StateDoubt[];
  /** Drops that it serves, each alone [-] */
  readonly served: Band;
  /** Part of the cases in which no other serves more [-] */
  readonly best: number;
}

/**
 * Collectors on a shop's ducts, doubted. In each case all of them are off alike, and the ducts too.
 *
 * @param shop - the shop
 * @param candidates - the collectors
 * @param options - how many cases, which, and how far things are off
 * @returns a study with an entry for each, in the same order
 */
export function* collectorDoubtStudy(
  shop: Shop,
  candidates: readonly Collector[],
  options: DoubtOptions = {},
): Study<readonly CollectorDoubt[]> {
  const air = airOf(shop.air);
  const curves = candidates.map((collector) => collectorCurve(collector, air));
  const [doubts = []] = yield* doubtStudy([shop], curves, usualStates(shop), options);
  const counts = doubts.map((states) => servedByCase(shop, states));
  return doubts.map((states, k) => {
    const mine = counts[k]!;
    const most = mine.map((_, i) => Math.max(...counts.map((each) => each[i]!)));
    const best = mine.filter((count, i) => count === most[i]).length / mine.length;
    return { states, served: bandOf(mine), best };
  });
}

/** Drops that are served alone, case by case. */
function servedByCase(shop: Shop, states: readonly StateDoubt[]): Float64Array {
  // The states begin with each drop alone, in the order of the document.
  const alone = shop.drops.map(({ id }, i) => states[i]!.drops.find((drop) => drop.id === id)!);
  const rounds = alone[0]?.cases.verdicts.length ?? 1;
  return Float64Array.from({ length: rounds - 1 }, (_, i) => {
    return alone.filter(({ cases }) => isServed({ verdict: cases.verdicts[i + 1]! })).length;
  });
}
