// Several collectors' curves over the one curve of the ducts, for one choice of open gates, and where
// all of that may lie: the ducts' curve, each collector's, and the point at which they meet.

import {
  availableSuction,
  type CollectorCurve,
  collectorCurve,
} from '../../curve/collector-curve.ts';
import { enteredRange } from '../../curve/entered-range.ts';
import { balance } from '../../solve/balance.ts';
import type { Crossing } from '../../solve/crossings.ts';
import { systemCurve, type SystemPoint } from '../../solve/system-curve.ts';
import {
  doubtedCurve,
  doubtedGates,
  doubtedLayouts,
  doubtfulLayouts,
} from '../../study/doubted-network.ts';
import type { Study } from '../../study/progress.ts';
import type { Travels } from '../gate-state.ts';
import { gateCoefficients } from '../network-of.ts';
import type { Collector } from '../schema/collector-schema.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { modelOf } from '../shop-model.ts';
import { type Band, bandOf } from './band.ts';
import { doubtCases, type DoubtOptions } from './doubt.ts';
import { doubtfulLayout } from './doubtful-shop.ts';

/** Where a suction at a flow may lie. */
export interface SuctionBand {
  /** Flow at the flange [m³/s] */
  readonly flow: number;
  /** [Pa] */
  readonly suction: Band;
}

/** A collector on the ducts. */
export interface CollectorOverDucts {
  readonly name: string;
  /** Suction that it leaves at the flange. */
  readonly curve: CollectorCurve;
  /** All crossings, by rising flow. */
  readonly crossings: readonly Crossing[];
  /** The one that counts: the stable one with the most flow. */
  readonly point: Crossing | undefined;
  /** Where its curve may lie, along the entered points. */
  readonly curveDoubt: readonly SuctionBand[];
  /** Where that point may lie, flow [m³/s] and suction [Pa]; undefined where a case has none. */
  readonly pointDoubt: { readonly flow: Band; readonly suction: Band } | undefined;
}

/** The ducts and what each collector does on them. */
export interface CollectorsOverDucts {
  /** Points of the system curve, from no flow up. */
  readonly system: readonly SystemPoint[];
  /** Where that curve may lie. */
  readonly systemDoubt: readonly SuctionBand[];
  readonly collectors: readonly CollectorOverDucts[];
}

/** Parts of the system curve, and of a collector's within its points, that bands are told at. */
const SYSTEM_PARTS = 24;
const CURVE_PARTS = 24;

/**
 * Collectors over the curve of the ducts. In each case all of them are off alike, and the ducts too.
 *
 * @param shop - a shop in order
 * @param candidates - the collectors, one at least
 * @param travels - travel of each drop's gate [-]
 * @param options - how many cases, which, and how far things are off
 * @returns a study of the curve of the ducts, and curve and crossings of each collector
 */
export function* collectorsOverDucts(
  shop: Shop,
  candidates: readonly Collector[],
  travels: Travels,
  options: DoubtOptions = {},
): Study<CollectorsOverDucts> {
  const model = modelOf(shop);
  const { ducts, air, work, curveWork } = model;
  const gates = gateCoefficients(ducts, travels);
  const curves = candidates.map((collector) => collectorCurve(collector, air));
  const balances = curves.map((curve) => balance(ducts.network, work, gates, curve));
  const reach = Math.max(...curves.map((curve) => enteredRange(curve).high));
  const flows = Array.from({ length: SYSTEM_PARTS + 1 }, (_, k) => (reach * k) / SYSTEM_PARTS);
  const system = systemCurve(ducts.network, gates, flows, curveWork);

  const doubtful = doubtfulLayouts([doubtfulLayout(shop, model)]);
  const cases = doubtCases(options);
  const column = () => new Float64Array(cases.length);
  const suctions = flows.map(column);
  const points = curves.map(() => ({ flow: column(), suction: column(), count: 0 }));
  for (const [round, factors] of cases.entries()) {
    const [network = ducts.network] = doubtedLayouts(doubtful, factors);
    const doubted = doubtedGates(gates, factors);
    systemCurve(network, doubted, flows, curveWork).forEach(({ suction }, k) => {
      suctions[k]![round] = suction;
    });
    for (const [k, curve] of curves.entries()) {
      const { point } = balance(network, work, doubted, doubtedCurve(curve, factors));
      if (point === undefined) continue;
      points[k]!.flow[round] = point.flow;
      points[k]!.suction[round] = point.suction;
      points[k]!.count += 1;
    }
    yield { done: round + 1, total: cases.length };
  }
  return {
    system,
    systemDoubt: flows.map((flow, k) => ({ flow, suction: bandOf(suctions[k]!) })),
    collectors: curves.map((curve, k) => {
      const { crossings, point } = balances[k]!;
      const { flow, suction, count } = points[k]!;
      const { low, high } = enteredRange(curve);
      const off = cases.map((factors) => doubtedCurve(curve, factors));
      return {
        name: candidates[k]!.curve.name,
        curve,
        crossings,
        point,
        curveDoubt: Array.from({ length: CURVE_PARTS + 1 }, (_, i): SuctionBand => {
          const at = low + ((high - low) * i) / CURVE_PARTS;
          const there = Float64Array.from(off, (each) => availableSuction(each, at));
          return { flow: at, suction: bandOf(there) };
        }),
        pointDoubt:
          count === cases.length ? { flow: bandOf(flow), suction: bandOf(suction) } : undefined,
      };
    }),
  };
}
