// What each section of a shop loses, as coefficients on its own velocity pressure: the pipe and its
// fittings, hood and port at an open end, and the change of diameter at its downstream end. Gates
// and wyes are not in it: gates move, and a wye depends on all its flows.

import { type Coefficient, sumOfCoefficients } from '../duct/coefficient.ts';
import { changeLoss } from './fitting-loss.ts';
import { type PipeNumbers, pipeNumbers } from './pipe-of.ts';
import type { Shop } from './schema/shop-schema.ts';
import { sectionParts } from './section-parts.ts';
import type { SectionTree } from './section-tree.ts';

/** One section as the solver and the report see it. */
export interface SectionLosses {
  readonly pipe: PipeNumbers;
  /** Pipe, fittings, hood and port [-] */
  readonly run: Coefficient;
  /** Change of diameter where it empties into a single pipe, 0 elsewhere [-] */
  readonly change: number;
}

/**
 * The losses of every section, in the order of the document.
 *
 * @param shop - a shop in order
 * @param tree - its tree
 * @param density - density of the air in the shop [kg/m³]
 * @returns coefficients [-], shape (sections)
 * @throws RangeError where a pipe or a hood is not in the tables
 */
export function sectionLosses(
  shop: Pick<Shop, 'sections' | 'drops'>,
  tree: SectionTree,
  density: number,
): readonly SectionLosses[] {
  const pipes = shop.sections.map(({ id, pipe }) => {
    const numbers = pipeNumbers(pipe);
    if (numbers === undefined) throw new RangeError(`section ${id} has a pipe not in the table`);
    return numbers;
  });
  return shop.sections.map((section, i) => {
    const pipe = pipes[i]!;
    const drop = shop.drops[tree.drops[i]?.[0] ?? -1];
    const parts = sectionParts(section, drop, pipe.diameter, density);
    const run = sumOfCoefficients(parts.map(({ coefficient }) => coefficient));
    const into = tree.into[i]!;
    const next = pipes[into];
    if (next === undefined || tree.inlets[into]!.length > 1) return { pipe, run, change: 0 };
    const change = changeLoss(pipe.diameter, next.diameter, section.transition, pipe.diameter);
    return { pipe, run, change: change.fixed };
  });
}
