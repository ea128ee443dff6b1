// Edits of one section. Where it leads is not among them: see edit-tree.ts.

import type { Fitting } from '../schema/fitting-schema.ts';
import type { Pipe, SectionJoin, Transition } from '../schema/section-schema.ts';
import { sectionTree } from '../section-tree.ts';
import { changed, onSection, type ShopEdit } from './change.ts';
import { joinLike } from './tidy-joins.ts';

/**
 * Gives a section another name.
 *
 * @param id - id of the section
 * @param name - one line of text, or undefined for none
 * @returns the edit
 */
export function renameSection(id: string, name: string | undefined): ShopEdit {
  return onSection(id, (section) => changed(section, { name }));
}

/**
 * Sets the length of a section.
 *
 * @param id - id of the section
 * @param length - length of the straight pipe, 0 or more [m]
 * @returns the edit
 */
export function setLength(id: string, length: number): ShopEdit {
  return onSection(id, (section) => changed(section, { length }));
}

/**
 * Sets the pipe of a section.
 *
 * @param id - id of the section
 * @param pipe - a pipe of the catalogue or one of its own
 * @returns the edit
 */
export function setPipe(id: string, pipe: Pipe): ShopEdit {
  return onSection(id, (section) => changed(section, { pipe }));
}

/**
 * Sets how far a hose is pushed together.
 *
 * @param id - id of the section
 * @param compression - fraction of its length, 0 to 0.6, or undefined for none [-]
 * @returns the edit
 */
export function setCompression(id: string, compression: number | undefined): ShopEdit {
  return onSection(id, (section) => changed(section, { compression }));
}

/**
 * Sets the fittings of a section.
 *
 * @param id - id of the section
 * @param fittings - all of them
 * @returns the edit
 */
export function setFittings(id: string, fittings: readonly Fitting[]): ShopEdit {
  return onSection(id, (section) => changed(section, { fittings }));
}

/**
 * Sets the change of diameter at the end of a section. Nothing happens at a wye or at the collector,
 * where there is none.
 *
 * @param id - id of the section
 * @param transition - how the diameter changes, or undefined for a cone of 30 degrees
 * @returns the edit
 */
export function setTransition(id: string, transition: Transition | undefined): ShopEdit {
  return (shop) => {
    const tree = sectionTree(shop);
    const into = tree.into[tree.position.get(id) ?? -1];
    if (tree.inlets[into ?? -1]?.length !== 1) return shop;
    return onSection(id, (section) => changed(section, { transition }))(shop);
  };
}

/**
 * Sets how a section joins its wye. The other inlets of that wye become of the same kind. Nothing
 * happens where there is no wye.
 *
 * @param id - id of the section
 * @param join - by momentum at an angle [deg], or a fixed coefficient [-]
 * @returns the edit
 */
export function setJoin(id: string, join: SectionJoin): ShopEdit {
  return (shop) => {
    const tree = sectionTree(shop);
    const inlets = tree.inlets[tree.into[tree.position.get(id) ?? -1] ?? -1] ?? [];
    if (inlets.length < 2) return shop;
    const sections = shop.sections.map((section, i) => {
      if (section.id === id) return changed(section, { join });
      return inlets.includes(i)
        ? changed(section, { join: joinLike(join, section.join) })
        : section;
    });
    return { ...shop, sections };
  };
}

/**
 * Writes a remark on a section.
 *
 * @param id - id of the section
 * @param note - text, or undefined to take it away
 * @returns the edit
 */
export function noteOnSection(id: string, note: string | undefined): ShopEdit {
  return onSection(id, (section) => changed(section, { note }));
}
