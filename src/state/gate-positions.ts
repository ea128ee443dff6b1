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
    drops
      .filter(({ id }) => open.includes(id))
      .map(({ id, gate }) => [id, openTravel(gate ? { gate } : {})]),
  );
}

/**
 * The gates with one of them moved.
 *
 * @param positions - where they stand
 * @param id - the drop whose gate is moved
 * @param travel - 0 shut to 1 drawn right out [-]
 * @returns the positions afterwards
 * @throws RangeError if the travel is outside 0 to 1
 */
export function withGate(positions: GatePositions, id: string, travel: number): GatePositions {
  if (!(travel >= 0 && travel <= 1)) {
    throw new RangeError(`a gate's travel must be 0 to 1, not ${travel}`);
  }
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
