// How sure a reach is: the whole search again with everything a little off, case by case.

import {
  doubtedCurve,
  doubtedGates,
  doubtedLayouts,
  doubtfulLayouts,
} from '../../study/doubted-network.ts';
import { lengthCrossings } from '../../study/length-crossings.ts';
import { finish, type Study } from '../../study/progress.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { type AddedRun, runDropId } from './choice.ts';
import { type Band, bandOf, shareOf } from './band.ts';
import { doubtCases, type DoubtOptions } from './doubt.ts';
import { doubtfulLayout } from './doubtful-shop.ts';
import { type ReachEnd, reachOf, type ReachOptions, reachPoint, USUAL_LONGEST } from './reach.ts';
import { reachModel } from './reach-model.ts';

/** What a reach ends by: what gives out, or nothing within the lengths that were looked at. */
export type ReachCause = 'need' | 'settles' | 'no operating point' | 'not within';

/** A reach, doubted. */
export interface ReachDoubt {
  /** The reach [m] */
  readonly length: Band;
  /** How many cases end by what [-] */
  readonly causes: Readonly<Record<ReachCause, number>>;
  /** Part of the cases that end by the same as with nothing off [-] */
  readonly holds: number;
  /** The drop at even steps of length, for the bands of a plot. */
  readonly points: readonly {
    /** Added length [m] */
    readonly length: number;
    /** Flow into the drop [m³/s] and lowest speed on its way [m/s]; 0 without an operating point */
    readonly flow: Band;
    readonly slowest: Band;
    /** Part of the cases in which the drop has its need and everything on its way carries [-] */
    readonly served: number;
  }[];
}

/**
 * A reach, doubted. A step of the study is one case.
 *
 * @param shop - a shop in order
 * @param run - the run that is added
 * @param options - greatest length, open gates, how many cases, which, and how far things are off
 * @returns a study of the reach in every case
 * @throws RangeError where the run can't be added, or for fewer than 256 cases
 */
export function* reachDoubtStudy(
  shop: Shop,
  run: AddedRun,
  options: ReachOptions & DoubtOptions = {},
): Study<ReachDoubt> {
  const { longest = USUAL_LONGEST, open = [runDropId(run.target)] } = options;
  const { shop: edited, model, drop, lengthening, conditions } = reachModel(shop, run, open);
  const doubtful = doubtfulLayouts([doubtfulLayout(edited, model)]);
  const search = (lengthened: typeof lengthening) => {
    const result = finish(lengthCrossings(lengthened, conditions, longest, model.work));
    const points = result.points.map((point) => reachPoint(model, drop, point));
    return { ...reachOf(result, conditions, longest), points };
  };
  const usual = search(lengthening);
  const cases = doubtCases(options);
  const found: (typeof usual)[] = [];
  for (const factors of cases) {
    const [network = lengthening.network] = doubtedLayouts(doubtful, factors);
    const gate = doubtedGates(lengthening.gate, factors);
    const curve = doubtedCurve(lengthening.curve, factors);
    found.push(search({ ...lengthening, network, gate, curve }));
    yield { done: found.length, total: cases.length };
  }
  const causes = { need: 0, settles: 0, 'no operating point': 0, 'not within': 0 };
  for (const { end } of found) causes[causeOf(end)] += 1;
  const { low } = shop.carryingRange;
  const { need = 0 } = drop;
  return {
    length: bandOf(Float64Array.from(found, ({ length }) => length)),
    causes,
    holds: shareOf(found, ({ end }) => causeOf(end) === causeOf(usual.end)),
    points: usual.points.map(({ length }, k) => {
      const figures = found.map(({ points }) => points[k]!.figures);
      return {
        length,
        flow: bandOf(Float64Array.from(figures, (each) => each?.flow ?? 0)),
        slowest: bandOf(Float64Array.from(figures, (each) => each?.slowest ?? 0)),
        served: shareOf(
          figures,
          (each) => each !== undefined && each.flow >= need && each.slowest >= low,
        ),
      };
    }),
  };
}

/** What a reach ends by. */
function causeOf(end: ReachEnd): ReachCause {
  if (end.kind === 'not within') return 'not within';
  if (end.kind === 'from the start') return end.fault;
  return end.limit.kind === 'need' ? 'need' : 'settles';
}
