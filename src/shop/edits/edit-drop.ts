// Edits of one drop. Its place in the tree is not among them: see edit-tree.ts.

import type { Drop, Gate, Hood } from '../schema/drop-schema.ts';
import type { Transition } from '../schema/section-schema.ts';
import { changed, onDrop, type ShopEdit } from './change.ts';

/**
 * Gives a drop another name. Its id stays, so gate sets keep it.
 *
 * @param id - id of the drop
 * @param name - one line of text
 * @returns the edit
 */
export function renameDrop(id: string, name: string): ShopEdit {
  return onDrop(id, (drop) => changed(drop, { name }));
}

/**
 * Sets what the air of a drop enters through.
 *
 * @param id - id of the drop
 * @param hood - a hood of the table, a coefficient or a reading
 * @returns the edit
 */
export function setHood(id: string, hood: Hood): ShopEdit {
  return onDrop(id, (drop) => changed(drop, { hood }));
}

/**
 * Sets the port of a drop's machine, and how it widens or narrows to the pipe.
 *
 * @param id - id of the drop
 * @param port - inside diameter [m], or undefined for that of the pipe
 * @param transition - how the diameter changes, or undefined for a cone of 30 degrees
 * @returns the edit
 */
export function setPort(
  id: string,
  port: number | undefined,
  transition: Transition | undefined,
): ShopEdit {
  return onDrop(id, (drop) => changed(drop, { port, transition }));
}

/**
 * Gives a drop a gate, or takes it away.
 *
 * @param id - id of the drop
 * @param gate - the gate, or undefined for a drop that is always open
 * @returns the edit
 */
export function setGate(id: string, gate: Gate | undefined): ShopEdit {
  return onDrop(id, (drop) => changed(drop, { gate }));
}

/**
 * Sets how far a drop's gate is pulled out when the drop is open. Without a gate nothing happens.
 *
 * @param id - id of the drop
 * @param travel - 0 to 1; 0 counts as 1 [-]
 * @returns the edit
 */
export function setGateTravel(id: string, travel: number): ShopEdit {
  return onDrop(id, (drop) =>
    drop.gate === undefined ? drop : changed(drop, { gate: changed(drop.gate, { travel }) }),
  );
}

/**
 * Sets the flow that a drop needs, and the machine whose guideline holds otherwise.
 *
 * @param id - id of the drop
 * @param need - flow [m³/s], or undefined for the guideline
 * @param machine - id of a machine of the table, or undefined for none
 * @returns the edit
 */
export function setNeed(id: string, need: number | undefined, machine: Drop['machine']): ShopEdit {
  return onDrop(id, (drop) => changed(drop, { need, machine }));
}

/**
 * Writes a remark on a drop.
 *
 * @param id - id of the drop
 * @param note - text, or undefined to take it away
 * @returns the edit
 */
export function noteOnDrop(id: string, note: string | undefined): ShopEdit {
  return onDrop(id, (drop) => changed(drop, { note }));
}
