// A new drop with its own section, joined to what is there in a wye.

import type { Drop } from '../schema/drop-schema.ts';
import type { Section, SectionJoin } from '../schema/section-schema.ts';
import type { ShopEdit } from './change.ts';
import { checkFree, type NewSection, sectionWith, splitSection } from './insert-section.ts';
import { roomForInlet, tidyJoins } from './tidy-joins.ts';

/** A drop, the section it feeds, and how that section joins. */
export interface NewBranch {
  readonly section: NewSection;
  readonly drop: Omit<Drop, 'into'>;
  readonly join: SectionJoin;
}

/**
 * Joins a new branch at the upstream end of a section, beside what empties into it already. A pipe
 * that came in alone becomes the straight run of the new wye. Nothing happens where a drop feeds the
 * section: that one has to be branched off in its length.
 *
 * @param into - id of the section to join
 * @param branch - the new drop, its section, and the join
 * @returns the edit
 */
export function addBranch(into: string, branch: NewBranch): ShopEdit {
  return (shop) => {
    sectionWith(shop, into);
    checkFree(shop, branch.section.id);
    if (shop.drops.some((drop) => drop.id === branch.drop.id)) {
      throw new RangeError(`a drop has the id ${branch.drop.id} already`);
    }
    if (!shop.sections.some((section) => section.into === into)) return shop;
    const room = roomForInlet(shop.sections, into, branch.join);
    const added: Section = { ...branch.section, into, join: room.join };
    return tidyJoins({
      ...shop,
      sections: [...room.sections, added],
      drops: [...shop.drops, { ...branch.drop, into: added.id }],
    });
  };
}

/**
 * Branches a new drop off in the length of a section: the section is cut in two and the branch joins
 * between the parts.
 *
 * @param id - id of the section; its downstream part keeps it
 * @param upstreamLength - length of the part upstream of the new wye [m]
 * @param upstreamId - id for that part
 * @param branch - the new drop, its section, and the join
 * @returns the edit
 */
export function branchOff(
  id: string,
  upstreamLength: number,
  upstreamId: string,
  branch: NewBranch,
): ShopEdit {
  return (shop) => addBranch(id, branch)(splitSection(id, upstreamLength, upstreamId)(shop));
}
