// After the tree has changed: every inlet of a wye says how it joins, all in the same way, and no
// other section does; a change of diameter stands only where two pipes follow in a row.

import type { Section, SectionJoin } from '../schema/section-schema.ts';
import { type SectionTree, sectionTree } from '../section-tree.ts';
import { changed, type ShopEdit } from './change.ts';

/** The usual wye of shop practice [deg]. */
const USUAL_ANGLE = 45;
/** The fixed branch factor of shop practice for 45 degrees, on the branch's velocity pressure [-]. */
const USUAL_FACTOR = 0.28;

/**
 * Puts joins and changes of diameter in order.
 *
 * @param shop - a shop whose tree is in order
 * @returns the shop in order; the very same if it was
 */
export const tidyJoins: ShopEdit = (shop) => {
  const tree = sectionTree(shop);
  const sections = shop.sections.map((section, i) => tidied(section, i, tree, shop.sections));
  return sections.every((section, i) => section === shop.sections[i])
    ? shop
    : { ...shop, sections };
};

/**
 * A join of the same kind as another. One of the other kind is replaced by what is usual for a
 * straight run or a branch.
 *
 * @param model - a join of the kind wanted
 * @param join - the join as it is, if there is one
 * @returns the join as it was, or the usual one
 */
export function joinLike(model: SectionJoin, join: SectionJoin | undefined): SectionJoin {
  if (join?.kind === model.kind) return join;
  const straight = join !== undefined && isStraight(join);
  if (model.kind === 'momentum') return { kind: 'momentum', angle: straight ? 0 : USUAL_ANGLE };
  return { kind: 'fixed', coefficient: straight ? 0 : USUAL_FACTOR, of: 'own' };
}

function tidied(
  section: Section,
  at: number,
  tree: SectionTree,
  sections: readonly Section[],
): Section {
  const into = tree.into[at] ?? -1;
  const inlets = tree.inlets[into] ?? [];
  if (inlets.length === 0) return changed(section, { join: undefined, transition: undefined });
  if (inlets.length === 1) return changed(section, { join: undefined });
  const joins = inlets.flatMap((inlet) => sections[inlet]?.join ?? []);
  const model = joins[0] ?? { kind: 'momentum', angle: 0 };
  // Where no inlet says anything yet, the first is the straight run.
  const own = section.join ?? (joins.length === 0 && inlets[0] === at ? model : undefined);
  return changed(section, { join: joinLike(model, own), transition: undefined });
}

function isStraight(join: SectionJoin): boolean {
  return join.kind === 'momentum' ? join.angle === 0 : join.coefficient === 0;
}
