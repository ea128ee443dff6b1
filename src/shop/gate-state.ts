// Which gates are open and how far: from a list of drops, or gate by gate.

import type { Drop } from './schema/drop-schema.ts';
import type { Shop } from './schema/shop-schema.ts';

/** Travel of each drop's gate, in the order of the drops; 1 where there is no gate [-]. */
export type Travels = readonly number[];

/** A gate state to look at, with the name it is known by. */
export interface NamedState {
  readonly kind: 'alone' | 'gate set';
  readonly name: string;
  /** Ids of the drops that were asked for. */
  readonly open: readonly string[];
}

/**
 * How far a drop's gate is pulled out when the drop is open.
 *
 * @param drop - a drop of the shop
 * @returns travel, above 0 to 1; 1 without a gate, or where the document's travel is 0 [-]
 */
export function openTravel(drop: Pick<Drop, 'gate'>): number {
  return drop.gate === undefined || drop.gate.travel === 0 ? 1 : drop.gate.travel;
}

/**
 * The travels when some drops are open and all others shut. Drops without a gate are always open.
 *
 * @param drops - the drops of the shop
 * @param open - ids of the drops that are open
 * @returns travel of each gate [-]
 * @throws RangeError if an id names no drop
 */
export function travelsWhenOpen(
  drops: readonly Pick<Drop, 'id' | 'gate'>[],
  open: readonly string[],
): Travels {
  const stray = open.find((id) => !drops.some((drop) => drop.id === id));
  if (stray !== undefined) throw new RangeError(`no drop has the id ${stray}`);
  return drops.map((drop) =>
    drop.gate === undefined || open.includes(drop.id) ? openTravel(drop) : 0,
  );
}

/**
 * The states that a shop is judged by: each drop alone, then every saved gate set.
 *
 * @param shop - a shop in order
 * @returns the states, in the order of the document
 */
export function usualStates(shop: Pick<Shop, 'drops' | 'gateSets'>): readonly NamedState[] {
  const alone = shop.drops.map(({ id, name }) => ({ kind: 'alone', name, open: [id] }) as const);
  const sets = shop.gateSets.map(({ name, open }) => ({ kind: 'gate set', name, open }) as const);
  return [...alone, ...sets];
}
