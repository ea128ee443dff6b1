// Sent by a gate while its blade moves, to whoever put it there and no further: it comes in every frame.

/**
 * How the blade comes where it is: `drag` follows the hand and `rest` ends that, `step` is a key,
 * and a `tap` asks for the other end without saying how to get there.
 */
export type GateMove = 'drag' | 'rest' | 'step' | 'tap';

export class GateMoveEvent extends Event {
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
