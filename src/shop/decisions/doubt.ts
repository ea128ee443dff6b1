// How sure a decision is: the same states again with fittings, walls, gates and the collector's curve
// off within their ranges, as an even sequence has it. Of each drop: how often it is still served or
// still not, by what verdicts, and between which values its figures lie.

import { sobolPoints } from '../../math/sobol.ts';
import { type DoubtedFigures, doubtedStates, figuresOf } from '../../study/doubt.ts';
import {
  DOUBTS,
  type DoubtFactors,
  type DoubtRanges,
  factorsAt,
  USUAL_DOUBT,
} from '../../study/doubt-factors.ts';
import {
  doubtedCurve,
  doubtedGates,
  doubtedLayouts,
  doubtfulLayouts,
} from '../../study/doubted-network.ts';
import type { Study } from '../../study/progress.ts';
import type { CollectorCurve } from '../../curve/collector-curve.ts';
import { type NamedState, travelsWhenOpen } from '../gate-state.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { modelOf, type ShopModel } from '../shop-model.ts';
import { type Verdict, verdictOn } from '../verdict.ts';
import { type Band, bandOf, shareOf } from './band.ts';
import { doubtfulLayout } from './doubtful-shop.ts';
import { dropWays, orderedGates } from './quick-states.ts';
import { isServed } from './solved-states.ts';

/** What may be chosen of a doubt, or left as it is usual. */
export interface DoubtOptions {
  /** How many cases; 256 if nothing is said, and no fewer [-] */
  readonly cases?: number;
  /** Whole number that the cases follow from; the same cases for the same one [-] */
  readonly seed?: number;
  readonly ranges?: DoubtRanges;
}

/** A drop in one state, doubted. */
export interface DropDoubt {
  readonly id: string;
  /** Its verdict with nothing off. */
  readonly verdict: Verdict;
  /** Part of the cases in which it is served as it is with nothing off, or not as it isn't [-] */
  readonly holds: number;
  /** How many cases end in each verdict [-] */
  readonly counts: Readonly<Record<Verdict, number>>;
  /** Flow [m³/s], speed in its own pipe and lowest speed on its way [m/s] */
  readonly flow: Band;
  readonly velocity: Band;
  readonly slowest: Band;
  /** Verdict and figures case by case, for what is asked beyond; that with nothing off comes first. */
  readonly cases: { readonly verdicts: readonly Verdict[]; readonly figures: DoubtedFigures };
}

/** A state, doubted. */
export interface StateDoubt {
  readonly state: NamedState;
  /** The open drops, in the order of the document. */
  readonly drops: readonly DropDoubt[];
}

/** Least number of cases that a doubt is told from [-] */
export const LEAST_CASES = 256;

/**
 * The cases of a doubt.
 *
 * @param options - how many, which, and how far things are off
 * @returns by what everything is off in each case
 * @throws RangeError for fewer than 256 cases
 */
export function doubtCases(options: DoubtOptions): readonly DoubtFactors[] {
  const { cases = LEAST_CASES, seed = 1, ranges = USUAL_DOUBT } = options;
  if (!(cases >= LEAST_CASES)) {
    throw new RangeError(`a doubt needs ${LEAST_CASES} cases at least, not ${cases}`);
  }
  return sobolPoints(cases, DOUBTS, seed).map((point) => factorsAt(point, ranges));
}

/**
 * States of several shops of one form on several collectors, doubted.
 *
 * @param shops - the shops; they may differ in the pipes of their sections alone
 * @param curves - the collectors, in the air of the shops
 * @param states - the states
 * @param options - how many cases, which, and how far things are off
 * @returns a study: by shop, then by collector, then by state
 * @throws RangeError where the shops differ in form, or for fewer than 256 cases
 */
export function* doubtStudy(
  shops: readonly Shop[],
  curves: readonly CollectorCurve[],
  states: readonly NamedState[],
  options: DoubtOptions = {},
): Study<readonly (readonly (readonly StateDoubt[])[])[]> {
  const cases = doubtCases(options);
  const total = (cases.length + 1) * shops.length;
  const models: ShopModel[] = [];
  for (const each of shops) {
    models.push(modelOf(each));
    yield { done: 0, total };
  }
  const [model] = models;
  const [shop] = shops;
  if (model === undefined || shop === undefined) return [];
  const doubtful = doubtfulLayouts(models.map((each, i) => doubtfulLayout(shops[i]!, each)));
  const { ducts, carryingRange } = model;
  const travels = states.map(({ open }) => travelsWhenOpen(shop.drops, open));
  const gates = travels.map((each) => orderedGates(ducts, each));
  const ways = dropWays(ducts);
  const open = travels.flatMap((each, state) =>
    [...each.keys()].filter((i) => each[i]! > 0).map((drop) => ({ state, drop })),
  );
  const followed = open.map(({ state, drop }) => ({ state, way: ways[drop]!.way }));
  const result = yield* doubtedStates(
    cases.length + 1,
    (round) => {
      const factors = cases[round - 1];
      if (factors === undefined) {
        return { layouts: models.map((each) => each.ducts.network), gates, curves };
      }
      return {
        layouts: doubtedLayouts(doubtful, factors),
        gates: gates.map((each) => doubtedGates(each, factors)),
        curves: curves.map((curve) => doubtedCurve(curve, factors)),
      };
    },
    followed,
  );
  const doubts: (readonly StateDoubt[])[][] = shops.map(() => []);
  for (const [layout, ofShop] of doubts.entries()) {
    for (const curve of curves.keys()) {
      const drops = states.map((): DropDoubt[] => []);
      for (const [index, { state, drop }] of open.entries()) {
        const { id, need } = ducts.drops[drop]!;
        const figures = figuresOf(result, layout, curve, index);
        drops[state]!.push(dropDoubt(id, figures, need, carryingRange));
      }
      ofShop.push(states.map((state, k) => ({ state, drops: drops[k]! })));
      yield { done: total, total };
    }
  }
  return doubts;
}

function dropDoubt(
  id: string,
  figures: DoubtedFigures,
  need: number | undefined,
  range: Shop['carryingRange'],
): DropDoubt {
  const verdicts = Array.from(figures.flow, (flow, round) =>
    verdictOn(
      {
        open: true,
        flow,
        need,
        velocity: figures.velocity[round]!,
        slowest: figures.slowest[round]!,
      },
      range,
    ),
  );
  const [verdict = 'shut', ...others] = verdicts;
  const counts = { shut: 0, settles: 0, short: 0, tight: 0, carries: 0 };
  for (const each of others) counts[each] += 1;
  const served = isServed({ verdict });
  return {
    id,
    verdict,
    holds: shareOf(others, (each) => isServed({ verdict: each }) === served),
    counts,
    flow: bandOf(figures.flow.subarray(1)),
    velocity: bandOf(figures.velocity.subarray(1)),
    slowest: bandOf(figures.slowest.subarray(1)),
    cases: { verdicts, figures },
  };
}
