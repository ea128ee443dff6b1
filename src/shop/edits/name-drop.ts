// A drop and its pipe under one name.

import type { ShopEdit } from './change.ts';
import { renameDrop } from './edit-drop.ts';
import { renameSection } from './edit-section.ts';

/**
 * What the pipe of a drop is called until it is called otherwise.
 *
 * @param drop - name of the drop
 * @returns 'Lathe drop'
 */
export function pipeNameOf(drop: string): string {
  return `${drop} drop`;
}

/**
 * What the hose of a drop is called until it is called otherwise.
 *
 * @param drop - name of the drop
 * @returns 'Lathe hose'
 */
export function hoseNameOf(drop: string): string {
  return `${drop} hose`;
}

/**
 * A section's name after its drop was given another one.
 *
 * @param name - name of the section
 * @param before - former name of the drop
 * @param after - its name now
 * @returns the name, changed only where it is the usual one of the drop's pipe or hose
 * @example
 * nameAlong('Lathe hose', 'Lathe', 'Old lathe'); // => 'Old lathe hose'
 * nameAlong('pipe to the Lathe', 'Lathe', 'Old lathe'); // => 'pipe to the Lathe'
 */
export function nameAlong(name: string, before: string, after: string): string {
  if (name === pipeNameOf(before)) return pipeNameOf(after);
  return name === hoseNameOf(before) ? hoseNameOf(after) : name;
}

/**
 * Gives a drop another name, and its pipe and hose with it where they are named after the drop.
 *
 * @param id - id of the drop
 * @param name - one line of text
 * @returns the edit
 */
export function nameDrop(id: string, name: string): ShopEdit {
  return (shop) => {
    const old = shop.drops.find((drop) => drop.id === id);
    const renamed = renameDrop(id, name)(shop);
    return shop.sections.reduce((all, section) => {
      if (old === undefined || section.name === undefined) return all;
      return renameSection(section.id, nameAlong(section.name, old.name, name))(all);
    }, renamed);
  };
}
