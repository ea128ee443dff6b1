// Sent by a drop's row: what is to become of its gate.

import { DcEvent } from '../dc-event.ts';
import type { GateMove } from '../gate/gate-move-event.ts';

/**
 * Either a new travel, 0 shut to 1 drawn right out [-], and how it got there; or a press:
 * open it, shut it, or open only this one.
 */
export type GateWish =
  | { readonly kind: 'travel'; readonly travel: number; readonly move: Exclude<GateMove, 'tap'> }
  | { readonly kind: 'open' | 'shut' | 'only' };

export class DropGateEvent extends DcEvent {
  static readonly type = 'dc-drop-gate';

  /** Id of the drop. */
  readonly drop: string;
  readonly wish: GateWish;

  constructor(drop: string, wish: GateWish) {
    super(DropGateEvent.type);
    this.drop = drop;
    this.wish = wish;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-drop-gate': DropGateEvent;
  }
}
