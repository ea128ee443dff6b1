// What is played to show how the operating point travels: the drops are opened one after another,
// then all are shut but one, whose gate is drawn slowly from shut to open.

import { openTravel } from '../shop/gate-state.ts';
import { type GatedDrop, type GatePositions, withGate } from './gate-positions.ts';

/** A stop of the play. */
export interface PlayStop {
  readonly gates: GatePositions;
  /** How the gates come here from the stop before: another drop is opened, or one gate drawn on. */
  readonly kind: 'drop' | 'draw';
  /** What has happened, in a few words. */
  readonly words: string;
}

/** A drop that is played. */
export interface PlayedDrop extends GatedDrop {
  readonly name: string;
}

/** Where the slow gate stops on its way, in parts of the way. */
const DRAWN = [
  [0.25, 'a quarter out'],
  [0.5, 'half out'],
  [0.75, 'three quarters out'],
  [1, 'all the way out'],
] as const;

/**
 * The stops of the play.
 *
 * @param drops - the drops of the shop; those without a gate stay open throughout
 * @param slow - id of the drop whose gate is drawn slowly at the end; the first if it has none
 * @returns the stops, beginning with all gates shut; none where no drop has a gate
 */
export function gatePlay(drops: readonly PlayedDrop[], slow: string | undefined): PlayStop[] {
  const gated = drops.filter(({ gate }) => gate !== undefined);
  const last = gated.find(({ id }) => id === slow) ?? gated[0];
  if (!last) return [];
  const shut: GatePositions = new Map();
  let gates = shut;
  const opened = gated.map(({ id, name, gate }, i): PlayStop => {
    gates = withGate(gates, id, openTravel(gate ? { gate } : {}));
    return { gates, kind: 'drop', words: i === 0 ? `${name} open` : `${name} open too` };
  });
  const drawn = DRAWN.map(
    ([travel, words]): PlayStop => ({
      gates: withGate(shut, last.id, travel),
      kind: 'draw',
      words: `${last.name} alone, ${words}`,
    }),
  );
  const allShut: PlayStop = { gates: shut, kind: 'drop', words: 'all shut' };
  return [allShut, ...opened, allShut, ...drawn];
}
