// A main whose sections may each be of another size, none narrower than what empties into it. All
// such mains are tried where they are few; where they are many, the search climbs from the best main
// of one size: each section takes every size in turn, what it leads to is widened and what leads to it
// narrowed along with it, until no such step is better. It may then miss a better main, and says so.

import { PIPE_FAMILIES } from '../../duct/catalogue.ts';
import type { Study } from '../../study/progress.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { sectionTree } from '../section-tree.ts';
import { type Choice, editOf } from './choice.ts';
import { isBetterMain, type MainScore, servedIn } from './main-score.ts';
import { resized } from './main-sections.ts';
import { type MainFigures, mainState } from './main-state.ts';
import { solvedStates } from './solved-states.ts';

/** Up to this many mains every one is tried, if nothing else is said [-] */
const USUAL_FEW = 3000;

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
  readonly search: 'every one' | 'climbing';
  /** How many mains were tried [-] */
  readonly tried: number;
  readonly best: ScoredMain;
  readonly bestUniform: ScoredMain;
  /** The best one in every state, solved in full. */
  readonly figures: MainFigures;
}

/** What a search works with. Sizes are positions in the family, by rising diameter. */
interface Search {
  readonly shop: Shop;
  readonly sections: readonly string[];
  readonly family: string;
  readonly sizes: readonly { readonly id: string; readonly diameter: number }[];
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
 * @param few - up to how many mains every one is tried [-]
 * @returns a study; a step is one main
 * @throws RangeError where there is no such family or no section
 */
export function* taperedMainStudy(
  shop: Shop,
  sections: readonly string[],
  familyId: string,
  few = USUAL_FEW,
): Study<TaperedMain> {
  const search = searchOf(shop, sections, familyId);
  const known = new Map<string, ScoredMain>();
  const scoreOf = (sizes: readonly number[]) => {
    const key = sizes.join();
    const scored = known.get(key) ?? scoreMain(search, sizes);
    known.set(key, scored);
    return scored;
  };
  const count = countUpTo(search, few);
  const isFew = count <= few;
  let bestUniform: ScoredMain | undefined;
  let start: readonly number[] = [];
  const guess = isFew ? count : 3 * sections.length * search.sizes.length;
  for (const size of search.sizes.keys()) {
    const sizes = sections.map(() => size);
    const scored = scoreOf(sizes);
    if (isBetterMain(scored.score, bestUniform?.score)) [bestUniform, start] = [scored, sizes];
    yield { done: known.size, total: Math.max(guess, known.size) };
  }
  let best = bestUniform;
  for (const sizes of isFew ? everyMain(search) : []) {
    const scored = scoreOf(sizes);
    if (isBetterMain(scored.score, best?.score)) best = scored;
    yield { done: known.size, total: Math.max(guess, known.size) };
  }
  for (let isBetterFound = !isFew; isBetterFound; ) {
    isBetterFound = false;
    for (const section of sections.keys()) {
      for (const size of search.sizes.keys()) {
        const sizes = withSize(search, start, section, size);
        const scored = scoreOf(sizes);
        if (isBetterMain(scored.score, best?.score))
          [best, start, isBetterFound] = [scored, sizes, true];
        yield { done: known.size, total: Math.max(guess, known.size) };
      }
    }
  }
  if (best === undefined || bestUniform === undefined) throw new RangeError('no section is chosen');
  const edited = editOf(best.choice)(shop);
  const states = solvedStates(edited).map(({ state, report }) =>
    mainState(edited, state, report, sections),
  );
  return {
    sections,
    search: isFew ? 'every one' : 'climbing',
    tried: known.size,
    best,
    bestUniform,
    figures: { states },
  };
}

function searchOf(shop: Shop, sections: readonly string[], familyId: string): Search {
  const family = PIPE_FAMILIES.find(({ id }) => id === familyId);
  if (family === undefined) throw new RangeError(`no family of pipe is called ${familyId}`);
  const tree = sectionTree(shop);
  const next = sections.map((id) => {
    let at = tree.into[tree.position.get(id) ?? -1] ?? -1;
    while (at >= 0 && !sections.includes(shop.sections[at]!.id)) at = tree.into[at]!;
    return at < 0 ? -1 : sections.indexOf(shop.sections[at]!.id);
  });
  const sizes = family.sizes.toSorted((a, b) => a.diameter - b.diameter);
  return { shop, sections, family: familyId, sizes, next };
}

/** How many mains there are, counted no further than just past a limit. */
function countUpTo(search: Search, limit: number): number {
  let count = 0;
  for (const _ of everyMain(search)) {
    count += 1;
    if (count > limit) break;
  }
  return count;
}

/** Every main that nowhere gets narrower toward the collector. */
function* everyMain({ sections, sizes, next }: Search): Generator<readonly number[], void, void> {
  const inward = inwardFirst(next);
  const chosen = sections.map(() => 0);
  function* from(k: number): Generator<readonly number[], void, void> {
    const at = inward[k];
    if (at === undefined) {
      yield [...chosen];
      return;
    }
    const most = next[at]! < 0 ? sizes.length - 1 : chosen[next[at]!]!;
    for (let size = 0; size <= most; size++) {
      chosen[at] = size;
      yield* from(k + 1);
    }
  }
  yield* from(0);
}

/** Positions of the sections, each after the one that it leads to. */
function inwardFirst(next: readonly number[]): number[] {
  const depth = (at: number): number => (next[at]! < 0 ? 0 : 1 + depth(next[at]!));
  return [...next.keys()].toSorted((a, b) => depth(a) - depth(b));
}

/** A section of another size: all downstream of it is as wide at least, all upstream at most. */
function withSize(
  { next }: Search,
  sizes: readonly number[],
  section: number,
  size: number,
): readonly number[] {
  return sizes.map((each, i) => {
    if (i === section) return size;
    if (leadsTo(next, section, i)) return Math.max(each, size);
    return leadsTo(next, i, section) ? Math.min(each, size) : each;
  });
}

function leadsTo(next: readonly number[], from: number, to: number): boolean {
  for (let i = from; i >= 0; i = next[i]!) if (i === to) return true;
  return false;
}

function scoreMain(search: Search, sizes: readonly number[]): ScoredMain {
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
  return { sizes: ids, score: { ...servedIn(editOf(choice)(shop)), wall }, choice };
}
