// Sent by a gate while its blade moves.

import { DcEvent } from '../dc-event.ts';

/**
 * How the blade came where it is: `drag` follows the hand, `step` is a key or a click, `rest` ends
 * a drag.
 */
export type GateMove = 'drag' | 'step' | 'rest';

export class GateMoveEvent extends DcEvent {
  static readonly type = 'dc-gate-move';

  /** 0 shut to 1 drawn right out [-]. */
  readonly travel: number;
  readonly move: GateMove;

  constructor(travel: number, move: GateMove) {
    super(GateMoveEvent.type);
    this.travel = travel;
    this.move = move;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-gate-move': GateMoveEvent;
  }
}
