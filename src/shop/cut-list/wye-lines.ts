// Wyes by their sizes and angles: one stands wherever two or more sections empty into the same one.

import type { SectionJoin } from '../schema/section-schema.ts';
import type { Shop } from '../schema/shop-schema.ts';
import type { SectionTree } from '../section-tree.ts';
import { inletsOf } from '../straight-run.ts';
import { type Counted, countAlike } from './counted.ts';
import { type StockPipe, stockPipe } from './stock-pipe.ts';
import { widestFirst } from './widest-first.ts';

/** An end of a wye where a branch comes in. */
export interface WyeBranch {
  readonly pipe: StockPipe;
  /** To the pipe that it joins; undefined where only a coefficient was entered [deg] */
  readonly angle: number | undefined;
}

/** Wyes that are alike. */
export interface WyeLine extends Counted {
  /** What they empty into, which says what they are made of. */
  readonly into: StockPipe;
  /** The straight run, where there is one. */
  readonly straight: StockPipe | undefined;
  readonly branches: readonly WyeBranch[];
}

/**
 * The wyes of a shop.
 *
 * @param shop - a shop in order
 * @param tree - its tree
 * @returns a line for each combination of sizes and angles, kind by kind, the widest first
 */
export function wyeLines({ sections }: Pick<Shop, 'sections'>, tree: SectionTree): WyeLine[] {
  const all = sections.flatMap((section, at): WyeLine[] => {
    if ((tree.inlets[at] ?? []).length < 2) return [];
    const inlets = inletsOf(sections, tree, at);
    const into = stockPipe(section.pipe);
    const straight =
      inlets.straight === undefined ? undefined : stockPipe(sections[inlets.straight]!.pipe);
    const branches = inlets.branches
      .map((inlet) => {
        const { pipe, join } = sections[inlet]!;
        return { pipe: stockPipe(pipe), angle: angleOf(join) };
      })
      .toSorted((a, b) => b.pipe.diameter - a.pipe.diameter || (a.angle ?? 0) - (b.angle ?? 0));
    const ends = branches.map(({ pipe, angle }) => `${pipe.size}-${angle ?? 'any'}`);
    const key = `wye-${into.family}-${into.size}-${straight?.size ?? 'none'}-${ends.join('-')}`;
    return [{ key, amount: 1, into, straight, branches }];
  });
  return widestFirst(countAlike(all), ({ into }) => into);
}

function angleOf(join: SectionJoin | undefined): number | undefined {
  return join?.kind === 'momentum' ? join.angle : undefined;
}
