// A main whose sections may each be of another size, none narrower than what empties into it. The best
// one is certain where all that could be better were tried or left out for a reason that holds:
//
// - a main that is so wide at the flange that all the air the collector moves at no suction at all
//   would be too slow there serves nobody, so it can't be better than one that serves a drop;
// - a main is left as soon as it has failed more drops than the best one so far fails altogether.
//
// Where there are too many even so, the search climbs from the best main of one size: each section
// takes every size in turn, what it leads to is widened and what leads to it narrowed along with it,
// until no such step is better. It may then miss a better main, and says so.
// (A line over 200 lines: the search and what bounds it prove each other.)

import { freeFlow } from '../../curve/free-flow.ts';
import { PIPE_FAMILIES, type PipeSize } from '../../duct/catalogue.ts';
import type { Study } from '../../study/progress.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { sectionTree } from '../section-tree.ts';
import { modelOf } from '../shop-model.ts';
import { type Choice, editOf } from './choice.ts';
import { isBetterMain, type MainScore, servedIn } from './main-score.ts';
import { resized } from './main-sections.ts';
import { countTapers, everyTaper, withSize } from './main-tapers.ts';
import { type MainFigures, mainState } from './main-state.ts';
import { solvedStates } from './solved-states.ts';

/** Up to this many mains every one is tried, if nothing else is said [-] */
const USUAL_FEW = 40_000;

/** One main. */
export interface ScoredMain {
  /** Size of each section, ids in the order of the sections. */
  readonly sizes: readonly string[];
  readonly score: MainScore;
  readonly choice: Choice;
}

/** The best tapered main beside the best one of one size. */
export interface TaperedMain {
  readonly sections: readonly string[];
  /** Whether the best one is certain, or the best that climbing found. */
  readonly search: 'every one' | 'climbing';
  /** Names of the sizes that a section could have, by rising diameter. */
  readonly sizes: readonly string[];
  /** How many mains were tried [-] */
  readonly tried: number;
  readonly best: ScoredMain;
  readonly bestUniform: ScoredMain;
  /** The best one in every state, solved in full. */
  readonly figures: MainFigures;
}

/** What may be chosen of a search, or left as it is usual. */
export interface TaperedOptions {
  /** Ids of the sizes that a section may have; all of the family if nothing is said. */
  readonly sizes?: readonly string[] | undefined;
  /** Up to how many mains every one is tried [-] */
  readonly few?: number;
}

/** What a search works with. Sizes are positions in the family, by rising diameter. */
interface Search {
  readonly shop: Shop;
  readonly sections: readonly string[];
  readonly family: string;
  readonly sizes: readonly PipeSize[];
  /** Position in `sections` of the next section of the main downstream, or -1. */
  readonly next: readonly number[];
}

/**
 * The best main of sections that don't get narrower toward the collector. What counts is how many
 * drops are served over each drop alone and all saved gate sets, then the room that is left, then the
 * least pipe.
 *
 * @param shop - a shop in order
 * @param sections - ids of the sections that count as the main
 * @param familyId - a family of the catalogue
 * @param options - which of its sizes, and up to how many mains every one is tried [-]
 * @returns a study; a step is one main
 * @throws RangeError where there is no such family or no section
 */
export function* taperedMainStudy(
  shop: Shop,
  sections: readonly string[],
  familyId: string,
  options: TaperedOptions = {},
): Study<TaperedMain> {
  const { few = USUAL_FEW } = options;
  const search = searchOf(shop, sections, familyId, options.sizes);
  const tried = new Set<string>();
  let best: ScoredMain | undefined;
  let start: readonly number[] = [];
  /** Whether a main that was not tried yet is better than the best so far, which it then is. */
  const isBetter = (sizes: readonly number[]): boolean => {
    const key = sizes.join();
    if (tried.has(key)) return false;
    tried.add(key);
    const scored = scoreMain(search, sizes, best?.score.served ?? 0);
    if (scored === undefined || !isBetterMain(scored.score, best?.score)) return false;
    [best, start] = [scored, sizes];
    return true;
  };
  for (const size of search.sizes.keys()) {
    isBetter(sections.map(() => size));
    yield { done: tried.size, total: sections.length * search.sizes.length };
  }
  const bestUniform = best;
  if (bestUniform === undefined) throw new RangeError('no section is chosen');

  const widest = bestUniform.score.served > 0 ? widestUseful(search) : search.sizes.length - 1;
  const count = countTapers({ next: search.next, widest }, few);
  const isFew = count <= few;
  if (isFew) {
    for (const sizes of everyTaper({ next: search.next, widest })) {
      isBetter(sizes);
      yield { done: tried.size, total: count + search.sizes.length - 1 - widest };
    }
  }
  const guess = 3 * sections.length * search.sizes.length;
  for (let isBetterFound = !isFew; isBetterFound; ) {
    isBetterFound = false;
    for (const section of sections.keys()) {
      for (const size of search.sizes.keys()) {
        if (isBetter(withSize(search.next, start, section, size))) isBetterFound = true;
        yield { done: tried.size, total: Math.max(guess, tried.size) };
      }
    }
  }
  const edited = editOf(best!.choice)(shop);
  const states = solvedStates(edited).map(({ state, report }) =>
    mainState(edited, state, report, sections),
  );
  return {
    sections,
    search: isFew ? 'every one' : 'climbing',
    sizes: search.sizes.map(({ name }) => name),
    tried: tried.size,
    best: best!,
    bestUniform,
    figures: { states },
  };
}

function searchOf(
  shop: Shop,
  sections: readonly string[],
  familyId: string,
  wanted: readonly string[] | undefined,
): Search {
  const family = PIPE_FAMILIES.find(({ id }) => id === familyId);
  if (family === undefined) throw new RangeError(`no family of pipe is called ${familyId}`);
  const tree = sectionTree(shop);
  const next = sections.map((id) => {
    let at = tree.into[tree.position.get(id) ?? -1] ?? -1;
    while (at >= 0 && !sections.includes(shop.sections[at]!.id)) at = tree.into[at]!;
    return at < 0 ? -1 : sections.indexOf(shop.sections[at]!.id);
  });
  const sizes = family.sizes
    .filter(({ id }) => wanted === undefined || wanted.includes(id))
    .toSorted((a, b) => a.diameter - b.diameter);
  if (sizes.length === 0)
    throw new RangeError(`${familyId} has none of the sizes ${wanted?.join()}`);
  return { shop, sections, family: familyId, sizes, next };
}

/**
 * Position of the widest size at the flange with which any drop can be served: with the flow at which
 * the collector has no suction left, the air is just fast enough there. No wye adds energy, so no
 * operating point lies beyond that flow, and what is farther out is no wider.
 */
function widestUseful({ shop, sections, sizes }: Search): number {
  const flange = shop.sections[sectionTree(shop).into.indexOf(-1)]!.id;
  // Of a main that doesn't reach the flange, some drops' air may pass nothing.
  if (!sections.includes(flange)) return sizes.length - 1;
  const { curve, carryingRange } = modelOf(shop);
  const most = freeFlow(curve);
  const isUseful = ({ diameter }: PipeSize) =>
    most >= carryingRange.low * (Math.PI / 4) * diameter ** 2;
  return most > 0 ? Math.max(0, sizes.findLastIndex(isUseful)) : sizes.length - 1;
}

/** Undefined where it serves fewer drops than that. */
function scoreMain(
  search: Search,
  sizes: readonly number[],
  atLeast: number,
): ScoredMain | undefined {
  const { shop, sections, family } = search;
  const ids = sizes.map((size) => search.sizes[size]!.id);
  const pipes = sections.map((id, i) => {
    const section = shop.sections.find((each) => each.id === id);
    if (section === undefined) throw new RangeError(`no section has the id ${id}`);
    return { section: id, pipe: resized(section.pipe, family, ids[i]!) };
  });
  const wall = sections.reduce((sum, id, i) => {
    const { length } = shop.sections.find((each) => each.id === id)!;
    return sum + Math.PI * search.sizes[sizes[i]!]!.diameter * length;
  }, 0);
  const choice = { kind: 'pipes', pipes } as const;
  const served = servedIn(editOf(choice)(shop), atLeast);
  return served && { sizes: ids, score: { ...served, wall }, choice };
}
