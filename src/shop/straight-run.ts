// Which pipe goes straight on through a wye, and which join it from the side.

import type { Section, SectionJoin } from './schema/section-schema.ts';
import type { SectionTree } from './section-tree.ts';

/**
 * Whether an inlet goes straight on.
 *
 * @param join - how it joins
 * @returns true at an angle of 0, or a fixed coefficient of 0
 */
export function isStraight(join: SectionJoin): boolean {
  return join.kind === 'momentum' ? join.angle === 0 : join.coefficient === 0;
}

/** What comes into a section, by position in the list of sections. */
export interface Inlets {
  /** The pipe that goes straight on, or the only one there is; undefined where none does. */
  readonly straight: number | undefined;
  /** Those that join from the side, in the order of the document. */
  readonly branches: readonly number[];
}

/**
 * The inlets of a section, told apart. Of several straight ones the first counts.
 *
 * @param sections - the sections of a shop
 * @param tree - its tree
 * @param at - position of the section [-]
 * @returns the straight run and the branches
 */
export function inletsOf(sections: readonly Section[], tree: SectionTree, at: number): Inlets {
  const inlets = tree.inlets[at] ?? [];
  const straight = inlets.find((inlet) => {
    const join = sections[inlet]?.join;
    return inlets.length === 1 || (join !== undefined && isStraight(join));
  });
  return { straight, branches: inlets.filter((inlet) => inlet !== straight) };
}
