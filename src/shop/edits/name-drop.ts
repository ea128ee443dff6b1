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
 * Gives a drop another name, and its pipe with it where that is named after the drop.
 *
 * @param id - id of the drop
 * @param name - one line of text
 * @returns the edit
 */
export function nameDrop(id: string, name: string): ShopEdit {
  return (shop) => {
    const renamed = renameDrop(id, name)(shop);
    const old = shop.drops.find((drop) => drop.id === id);
    const pipes = shop.sections.filter(({ name: own }) => old && own === pipeNameOf(old.name));
    return pipes.reduce((all, { id: pipe }) => renameSection(pipe, pipeNameOf(name))(all), renamed);
  };
}
