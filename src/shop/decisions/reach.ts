// How far a drop can reach: what a longer run costs it, and at which lengths something gives out.
// Every limit is found as a root over the length and reported, not the first one alone.

import {
  lengthCrossings,
  type LengthCrossing,
  type LengthPoint,
  type LengthResult,
} from '../../study/length-crossings.ts';
import type { Study } from '../../study/progress.ts';
import type { DropNumbers } from '../network-of.ts';
import type { Shop } from '../schema/shop-schema.ts';
import type { ShopModel } from '../shop-model.ts';
import { type AddedRun, runDropId } from './choice.ts';
import { type Condition, type LimitKind, reachModel } from './reach-model.ts';

/** A length at which something gives out or comes back. */
export interface ReachLimit {
  readonly kind: LimitKind;
  /** Added length [m] */
  readonly length: number;
  /** Id of the section on the way; undefined where it is no matter of a section. */
  readonly section: string | undefined;
  /** Whether the condition begins to hold there, such as chips settling, or ceases to. */
  readonly effect: 'begins' | 'ends';
  /** Whether the flow leaps there: the collector goes over to another operating point. */
  readonly leaps: boolean;
}

/** The drop at one added length. Without an operating point there are no figures. */
export interface ReachPoint {
  /** Added length [m] */
  readonly length: number;
  /** Flow into the drop [m³/s], and the lowest speed on its way [m/s] with the section it is in. */
  readonly figures:
    | { readonly flow: number; readonly slowest: number; readonly section: string }
    | undefined;
}

/** Why a reach ends. */
export type ReachEnd =
  /** Not within the greatest length that was looked at. */
  | { readonly kind: 'not within' }
  | { readonly kind: 'limit'; readonly limit: ReachLimit }
  /** The drop is short of air, or chips settle on its way, before any length is added. */
  | {
      readonly kind: 'from the start';
      readonly fault: 'need' | 'settles' | 'no operating point';
      readonly section: string | undefined;
    };

/** The whole answer. */
export interface Reach {
  readonly run: AddedRun;
  /** Ids of the drops that are open. */
  readonly open: readonly string[];
  /** What the drop needs [m³/s], if anybody said */
  readonly need: number | undefined;
  /** Greatest length that was looked at [m] */
  readonly longest: number;
  /** Up to here from 0 on the drop gets its need and everything on its way carries [m] */
  readonly length: number;
  readonly end: ReachEnd;
  /** All limits by rising length. */
  readonly limits: readonly ReachLimit[];
  /** The drop at even steps of length, for a plot. */
  readonly points: readonly ReachPoint[];
}

/** What may be chosen of a search, or left as it is usual. */
export interface ReachOptions {
  /** Greatest length to look at [m]; 30 m if nothing is said */
  readonly longest?: number;
  /** Ids of drops that are open; that of the run alone if nothing is said */
  readonly open?: readonly string[];
}

/** Greatest length to look at if nothing is said [m] */
export const USUAL_LONGEST = 30;

/**
 * How far a drop reaches with an added run.
 *
 * @param shop - a shop in order
 * @param run - the run that is added
 * @param options - greatest length and open gates
 * @returns a study of the reach
 * @throws RangeError where the run can't be added, with the reason
 */
export function* reachStudy(shop: Shop, run: AddedRun, options: ReachOptions = {}): Study<Reach> {
  const { longest = USUAL_LONGEST, open = [runDropId(run.target)] } = options;
  const { model, drop, lengthening, conditions } = reachModel(shop, run, open);
  const result = yield* lengthCrossings(lengthening, conditions, longest, model.work);
  return {
    run,
    open,
    need: drop.need,
    longest,
    ...reachOf(result, conditions, longest),
    points: result.points.map((point) => reachPoint(model, drop, point)),
  };
}

/**
 * Reads the reach from the lengths at which something gives out.
 *
 * @param result - what lengthening does
 * @param conditions - what its thresholds mean
 * @param longest - greatest length that was looked at [m]
 * @returns the reach [m], why it ends, and all limits
 */
export function reachOf(
  { crossings, points }: LengthResult,
  conditions: readonly Condition[],
  longest: number,
): Pick<Reach, 'length' | 'end' | 'limits'> {
  const limits = crossings.map((crossing) => limitOf(crossing, conditions));
  return { ...endOf(conditions, limits, points[0]!, longest), limits };
}

function limitOf(crossing: LengthCrossing, conditions: readonly Condition[]): ReachLimit {
  const { kind, at, holds } = conditions[crossing.threshold]!;
  return {
    kind,
    length: crossing.length,
    section: at,
    effect: crossing.rises === (holds === 'above') ? 'begins' : 'ends',
    leaps: crossing.leaps,
  };
}

/** Where the reach ends: at the first limit that takes the drop its need or its carrying speed. */
function endOf(
  conditions: readonly Condition[],
  limits: readonly ReachLimit[],
  start: LengthPoint,
  longest: number,
): Pick<Reach, 'length' | 'end'> {
  const fails = ({ kind }: { readonly kind: LimitKind }) => kind === 'need' || kind === 'settles';
  if (start.flow.length === 0) {
    const fault = 'no operating point';
    return { length: 0, end: { kind: 'from the start', fault, section: undefined } };
  }
  const wrong = conditions
    .filter((each) => fails(each) && start.flow[each.section]! < each.flow)
    .toSorted((a, b) => share(a, start) - share(b, start));
  const worst = wrong.find(({ kind }) => kind === 'settles') ?? wrong[0];
  if (worst !== undefined) {
    const fault = worst.kind === 'need' ? 'need' : 'settles';
    return { length: 0, end: { kind: 'from the start', fault, section: worst.at } };
  }
  const limit = limits.find((each) => fails(each) && each.effect === 'begins');
  if (limit === undefined) return { length: longest, end: { kind: 'not within' } };
  return { length: limit.length, end: { kind: 'limit', limit } };
}

function share({ section, flow }: Condition, start: LengthPoint): number {
  return start.flow[section]! / flow;
}

/**
 * The drop at one length.
 *
 * @param model - the shop with the run
 * @param drop - the drop
 * @param point - flows at a length [m³/s], in the network's order
 * @returns its flow [m³/s] and the slowest place on its way [m/s]
 */
export function reachPoint(model: ShopModel, drop: DropNumbers, point: LengthPoint): ReachPoint {
  const { network, sections } = model.ducts;
  const { length, flow } = point;
  if (flow.length === 0) return { length, figures: undefined };
  const ways = drop.way.map((at) => {
    const velocity =
      flow[network.order.indexOf(at)]! / ((Math.PI / 4) * sections[at]!.pipe.diameter ** 2);
    return { at, velocity };
  });
  const slowest = ways.reduce((a, b) => (b.velocity < a.velocity ? b : a));
  const own = flow[network.order.indexOf(drop.way[0]!)]!;
  return {
    length,
    figures: { flow: own, slowest: slowest.velocity, section: model.sectionIds[slowest.at]! },
  };
}
