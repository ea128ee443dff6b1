// After the tree has changed: every inlet of a wye says how it joins, all in the same way, and no
// other section does; a change of diameter stands only where two pipes follow in a row.

import type { Section, SectionJoin } from '../schema/section-schema.ts';
import { type SectionTree, sectionTree } from '../section-tree.ts';
import { isStraight } from '../straight-run.ts';
import { changed, type ShopEdit } from './change.ts';

const STRAIGHT: SectionJoin = { kind: 'momentum', angle: 0 };
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

/** Sections of which some make room for another inlet, and how that one joins. */
export interface RoomForInlet {
  readonly sections: readonly Section[];
  readonly join: SectionJoin;
}

/**
 * Makes room for one more inlet of a section. A pipe that came in alone becomes the straight run of
 * the new wye, and no wye gets a second one: what would be that joins at the usual angle.
 *
 * @param sections - the sections, of which at least one empties into that section
 * @param into - id of the section
 * @param join - how the new inlet is to join; undefined for the usual way
 * @returns the sections with joins, and the join in the manner of this wye
 */
export function roomForInlet(
  sections: readonly Section[],
  into: string,
  join: SectionJoin | undefined,
): RoomForInlet {
  const inlets = sections.filter((section) => section.into === into);
  const model = inlets[0]?.join ?? join ?? STRAIGHT;
  const straight = joinLike(model, STRAIGHT);
  const joined = sections.map((section) =>
    section.into === into ? changed(section, { join: section.join ?? straight }) : section,
  );
  const hasStraight = joined.some(
    (each) => each.into === into && each.join && isStraight(each.join),
  );
  const wish = join && hasStraight && isStraight(join) ? undefined : join;
  return { sections: joined, join: joinLike(model, wish) };
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
