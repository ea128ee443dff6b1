// The trail of operating points: the states of the gates that were tried, each once.

import type { Shop } from '../shop/schema/shop-schema.ts';
import type { ShopModel } from '../shop/shop-model.ts';
import type { DropReport, StateReport } from '../shop/state-report.ts';
import type { Verdict } from '../shop/verdict.ts';

/** A gate that was open, and how far. */
export interface TriedGate {
  readonly name: string;
  /** Above 0 to 1 drawn right out [-] */
  readonly travel: number;
}

/** A state that was tried. */
export interface Tried {
  /** What was open, short enough for the plot. */
  readonly name: string;
  /** All that was open, in the order of the document. */
  readonly gates: readonly TriedGate[];
  /** Flow at the flange [m³/s] */
  readonly flow: number;
  /** Total suction there [Pa] */
  readonly suction: number;
  /** The slowest pipe that an open drop's air passed: its name and the speed in it [m/s] */
  readonly slowest: { readonly name: string; readonly velocity: number };
  /** The gravest verdict on an open drop. */
  readonly verdict: Verdict;
  /** 'balanced', or what was the matter. */
  readonly outcome: string;
  /** Air, collector and ducts it was tried with. */
  readonly model: ShopModel;
}

/** Older states are forgotten. */
const MOST_TRIED = 40;
/** Two states that differ less, in parts of the flow, are one on the page [-]. */
const SAME_FLOW = 0.003;
/** The gravest first. */
const BY_GRAVITY: readonly Verdict[] = ['settles', 'short', 'tight', 'carries', 'shut'];

/**
 * The present state as one to remember.
 *
 * @param shop - for the names
 * @param model - what it was balanced with
 * @param report - the state
 * @returns the state, or undefined where nothing is open or nothing balances
 */
export function triedState(
  shop: Pick<Shop, 'drops' | 'sections'>,
  model: ShopModel,
  report: StateReport,
): Tried | undefined {
  const point = report.operatingPoint;
  const open = shop.drops.flatMap(({ name }, i) => {
    const drop = report.drops[i]!;
    return drop.travel > 0 ? [{ name, drop }] : [];
  });
  const first = open[0];
  if (!point || !first) return undefined;
  const names = open.map(({ name }) => name);
  const drops = open.map(({ drop }) => drop);
  const slowest = slowestOf(first.drop, drops);
  return {
    name: names.length > 2 ? `${names.length} open` : names.join(' + '),
    gates: open.map(({ name, drop }) => ({ name, travel: drop.travel })),
    flow: point.flow,
    suction: point.suction,
    slowest: {
      name: shop.sections.find(({ id }) => id === slowest.section)?.name ?? slowest.section,
      velocity: slowest.velocity,
    },
    verdict: BY_GRAVITY.find((grave) => drops.some(({ verdict }) => verdict === grave)) ?? 'shut',
    outcome: report.outcome,
    model,
  };
}

function slowestOf(first: DropReport, drops: readonly DropReport[]): DropReport['slowest'] {
  return drops.reduce(
    (least, { slowest }) => (slowest.velocity < least.velocity ? slowest : least),
    first.slowest,
  );
}

/**
 * Adds a state to the trail. One with the same gates takes the place of the former; states of other
 * ducts or another collector are forgotten with them, which are many while a point is dragged.
 *
 * @param trail - the states tried, the latest last
 * @param state - the latest
 * @returns the trail with it, at most forty long
 */
export function addTried(trail: readonly Tried[], state: Tried): readonly Tried[] {
  const others = trail.filter((tried) => tried.model === state.model && !isSameState(tried, state));
  return [...others, state].slice(-MOST_TRIED);
}

function isSameState(a: Tried, b: Tried): boolean {
  const [first, second] = [a.gates, b.gates];
  return (
    first.length === second.length &&
    first.every(({ name, travel }, i) => name === second[i]!.name && travel === second[i]!.travel)
  );
}

/**
 * The states that the plot marks: the latest ones, each place of the page once.
 *
 * @param trail - the states tried, the latest last
 * @param point - where the point is now; nothing is marked under it
 * @param most - how many to mark at most [-]
 * @returns those states, the latest last
 */
export function markedStates(
  trail: readonly Tried[],
  point: { readonly flow: number } | undefined,
  most: number,
): readonly Tried[] {
  const marked: Tried[] = [];
  for (const tried of trail.toReversed()) {
    const taken = point ? [...marked, point] : marked;
    if (!taken.some((other) => isSamePlace(other, tried))) marked.unshift(tried);
    if (marked.length === most) break;
  }
  return marked;
}

/**
 * Whether two points lie on one place of the page.
 *
 * @param a - a flow at the flange [m³/s]
 * @param b - another [m³/s]
 * @returns true if they differ by less than 0.3 %
 */
export function isSamePlace(a: { readonly flow: number }, b: { readonly flow: number }): boolean {
  return Math.abs(a.flow - b.flow) <= SAME_FLOW * Math.max(a.flow, b.flow);
}
