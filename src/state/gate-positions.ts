// Where the gates of a shop stand, by the id of their drop, so that they stay with their machine when
// the list of drops changes.

import { openTravel, type Travels } from '../shop/gate-state.ts';
import type { Gate } from '../shop/schema/drop-schema.ts';

/** Travel of gates by the id of their drop, 0 shut to 1 drawn right out [-]; not listed: shut. */
export type GatePositions = ReadonlyMap<string, number>;

/** What has to be known of a drop to move its gate; without a gate it is always open. */
export interface GatedDrop {
  readonly id: string;
  readonly gate?: Gate | undefined;
}

/**
 * The gates when just these drops are open, each as far as its document says.
 *
 * @param drops - the drops of the shop
 * @param open - ids of the drops to be open
 * @returns the positions
 */
export function positionsWhenOpen(
  drops: readonly GatedDrop[],
  open: readonly string[],
): GatePositions {
  return new Map(
    drops.filter(({ id }) => open.includes(id)).map((drop) => [drop.id, openTravelOf(drop)]),
  );
}

/**
 * The gates with one of them moved.
 *
 * @param positions - where they stand
 * @param id - the drop whose gate is moved
 * @param travel - 0 shut to 1 drawn right out [-]
 * @returns the positions afterwards, the very same if it stands there already
 * @throws RangeError if the travel is outside 0 to 1
 */
export function withGate(positions: GatePositions, id: string, travel: number): GatePositions {
  if (!(travel >= 0 && travel <= 1)) {
    throw new RangeError(`a gate's travel must be 0 to 1, not ${travel}`);
  }
  if (positions.get(id) === travel) return positions;
  return new Map(positions).set(id, travel);
}

/**
 * The gates on their way from one state to another.
 *
 * @param from - where they stood
 * @param to - where they are going
 * @param part - how much of the way is behind them, 0 to 1 [-]
 * @returns the positions there
 */
export function positionsBetween(
  from: GatePositions,
  to: GatePositions,
  part: number,
): GatePositions {
  const ids = new Set([...from.keys(), ...to.keys()]);
  return new Map(
    [...ids].map((id) => {
      const start = from.get(id) ?? 0;
      return [id, start + ((to.get(id) ?? 0) - start) * part];
    }),
  );
}

/**
 * The positions as the solver takes them.
 *
 * @param drops - the drops of the shop
 * @param positions - where their gates stand
 * @returns travel of each drop's gate in the order of the drops; 1 where there is no gate [-]
 */
export function travelsOf(drops: readonly GatedDrop[], positions: GatePositions): Travels {
  return drops.map(({ id, gate }) => (gate === undefined ? 1 : (positions.get(id) ?? 0)));
}

/**
 * The gates after an edit of the drops. A gate stays where it is, with these exceptions: one that
 * stood as far out as its document said goes along when the document says otherwise; one that is put
 * on a drop that was always open stands open; a drop that is new comes with its gate shut.
 *
 * @param positions - where the gates stood
 * @param before - the drops before the edit
 * @param after - the drops after it
 * @returns the positions now, the very same if nothing moves
 */
export function followDrops(
  positions: GatePositions,
  before: readonly GatedDrop[],
  after: readonly GatedDrop[],
): GatePositions {
  if (before === after) return positions;
  const former = new Map(before.map((drop) => [drop.id, drop]));
  const moved = after.flatMap((drop) => {
    const was = former.get(drop.id);
    if (was === undefined || drop.gate === undefined) return [];
    const stoodOpen = was.gate === undefined || positions.get(drop.id) === openTravelOf(was);
    return stoodOpen ? [[drop.id, openTravelOf(drop)] as const] : [];
  });
  const changes = moved.filter(([id, travel]) => positions.get(id) !== travel);
  return changes.length === 0 ? positions : new Map([...positions, ...changes]);
}

/**
 * The gates with those of new drops shut, whatever a drop of the same id did before.
 *
 * @param positions - where the gates stood
 * @param before - the drops before the edit
 * @param after - the drops after it
 * @returns the positions now, the very same if nothing moves
 */
export function newcomersShut(
  positions: GatePositions,
  before: readonly GatedDrop[],
  after: readonly GatedDrop[],
): GatePositions {
  const old = new Set(before.map(({ id }) => id));
  const stale = after.filter(({ id }) => !old.has(id) && positions.has(id));
  if (stale.length === 0) return positions;
  return new Map([...positions].filter(([id]) => !stale.some((drop) => drop.id === id)));
}

function openTravelOf({ gate }: GatedDrop): number {
  return openTravel(gate === undefined ? {} : { gate });
}
