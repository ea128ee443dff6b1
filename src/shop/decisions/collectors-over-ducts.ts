// Several collectors' curves over the one curve of the ducts, for one choice of open gates.

import type { CollectorCurve } from '../../curve/collector-curve.ts';
import { collectorCurve } from '../../curve/collector-curve.ts';
import { enteredRange } from '../../curve/entered-range.ts';
import { balance } from '../../solve/balance.ts';
import type { Crossing } from '../../solve/crossings.ts';
import { systemCurve, type SystemPoint } from '../../solve/system-curve.ts';
import { travelsWhenOpen } from '../gate-state.ts';
import { gateCoefficients } from '../network-of.ts';
import type { Collector } from '../schema/collector-schema.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { modelOf } from '../shop-model.ts';

/** The ducts and what each collector does on them. */
export interface CollectorsOverDucts {
  /** Points of the system curve, from no flow up. */
  readonly system: readonly SystemPoint[];
  readonly collectors: readonly {
    readonly name: string;
    /** Suction that it leaves at the flange. */
    readonly curve: CollectorCurve;
    /** All crossings, by rising flow. */
    readonly crossings: readonly Crossing[];
    /** The one that counts: the stable one with the most flow. */
    readonly point: Crossing | undefined;
  }[];
}

/** Points of the system curve. */
const SYSTEM_PARTS = 24;

/**
 * Collectors over the curve of the ducts.
 *
 * @param shop - a shop in order
 * @param candidates - the collectors
 * @param open - ids of the drops that are open
 * @returns the curve of the ducts, and curve and crossings of each collector
 */
export function collectorsOverDucts(
  shop: Shop,
  candidates: readonly Collector[],
  open: readonly string[],
): CollectorsOverDucts {
  const { ducts, air, work, curveWork } = modelOf(shop);
  const gates = gateCoefficients(ducts, travelsWhenOpen(shop.drops, open));
  const collectors = candidates.map((collector) => {
    const curve = collectorCurve(collector, air);
    const { crossings, point } = balance(ducts.network, work, gates, curve);
    return { name: collector.curve.name, curve, crossings, point };
  });
  const reach = Math.max(...collectors.map(({ curve }) => enteredRange(curve).high));
  const flows = Array.from({ length: SYSTEM_PARTS + 1 }, (_, k) => (reach * k) / SYSTEM_PARTS);
  const system = systemCurve(ducts.network, gates, flows, curveWork);
  return { system, collectors };
}
