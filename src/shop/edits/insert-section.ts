// New pipe into a run that is there: at either end of a section, or in the middle of one.

import type { Section } from '../schema/section-schema.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { changed, type ShopEdit } from './change.ts';
import { tidyJoins } from './tidy-joins.ts';

/** A section to be put in; where it leads and how it joins follows from the place. */
export type NewSection = Omit<Section, 'into' | 'join' | 'transition'>;

/**
 * Puts a section in at the downstream end of another, before what that one empties into.
 *
 * @param id - id of the section that is there
 * @param section - the new section, with an id of its own
 * @returns the edit
 */
export function insertDownstream(id: string, section: NewSection): ShopEdit {
  return (shop) => {
    const old = sectionWith(shop, id);
    checkFree(shop, section.id);
    const { into, join } = old;
    const added: Section = join === undefined ? { ...section, into } : { ...section, into, join };
    const moved = changed(old, { into: section.id, join: undefined, transition: undefined });
    const sections = shop.sections.flatMap((each) => (each === old ? [added, moved] : [each]));
    return tidyJoins({ ...shop, sections });
  };
}

/**
 * Puts a section in at the upstream end of another. What fed that one feeds the new one.
 *
 * @param id - id of the section that is there
 * @param section - the new section, with an id of its own
 * @returns the edit
 */
export function insertUpstream(id: string, section: NewSection): ShopEdit {
  return (shop) => {
    const old = sectionWith(shop, id);
    checkFree(shop, section.id);
    const follow = <T extends { readonly into: string }>(part: T): T =>
      part.into === id ? { ...part, into: section.id } : part;
    const sections = shop.sections.map(follow);
    sections.splice(shop.sections.indexOf(old) + 1, 0, { ...section, into: id });
    return tidyJoins({ ...shop, sections, drops: shop.drops.map(follow) });
  };
}

/**
 * Cuts a section in two of the same pipe. The fittings stay with the downstream part, which keeps the
 * id; what fed the section feeds the upstream part.
 *
 * @param id - id of the section
 * @param upstreamLength - length of the upstream part; the section's own at most [m]
 * @param upstreamId - id for the upstream part
 * @returns the edit
 */
export function splitSection(id: string, upstreamLength: number, upstreamId: string): ShopEdit {
  return (shop) => {
    const old = sectionWith(shop, id);
    const length = Math.min(Math.max(upstreamLength, 0), old.length);
    const { pipe, compression } = old;
    const upstream: NewSection = { id: upstreamId, pipe, length, fittings: [] };
    const whole = insertUpstream(id, changed(upstream, { compression }))(shop);
    const sections = whole.sections.map((each) =>
      each.id === id ? changed(each, { length: old.length - length }) : each,
    );
    return { ...whole, sections };
  };
}

/**
 * A section of a shop.
 *
 * @param shop - the shop
 * @param id - id of the section
 * @returns the section
 * @throws RangeError if there is none
 */
export function sectionWith(shop: Shop, id: string): Section {
  const section = shop.sections.find((each) => each.id === id);
  if (section === undefined) throw new RangeError(`no section has the id ${id}`);
  return section;
}

/**
 * Makes sure that no section has an id yet.
 *
 * @param shop - the shop
 * @param id - id for a new section
 * @throws RangeError if it is taken
 */
export function checkFree(shop: Shop, id: string): void {
  if (shop.sections.some((each) => each.id === id)) {
    throw new RangeError(`a section has the id ${id} already`);
  }
}
