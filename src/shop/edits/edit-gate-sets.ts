// Edits of the saved gate sets.

import type { GateSet } from '../schema/shop-schema.ts';
import type { ShopEdit } from './change.ts';

/**
 * Saves a gate set; one of the same id is replaced.
 *
 * @param set - id, name and the drops that are open
 * @returns the edit
 */
export function saveGateSet(set: GateSet): ShopEdit {
  return (shop) => {
    const open = shop.drops.map(({ id }) => id).filter((id) => set.open.includes(id));
    const next = { ...set, open };
    const at = shop.gateSets.findIndex(({ id }) => id === set.id);
    const gateSets = at === -1 ? [...shop.gateSets, next] : shop.gateSets.with(at, next);
    return { ...shop, gateSets };
  };
}

/**
 * Takes a gate set out. Nothing happens if there is none of that id.
 *
 * @param id - id of the gate set
 * @returns the edit
 */
export function removeGateSet(id: string): ShopEdit {
  return (shop) => {
    const gateSets = shop.gateSets.filter((set) => set.id !== id);
    return gateSets.length === shop.gateSets.length ? shop : { ...shop, gateSets };
  };
}
