// Sent by the list of drops when a saved set of gates is chosen.

import { DcEvent } from '../dc-event.ts';

export class GateSetEvent extends DcEvent {
  static readonly type = 'dc-gate-set';

  /** Ids of the drops to be open; all others are shut. */
  readonly open: readonly string[];

  constructor(open: readonly string[]) {
    super(GateSetEvent.type);
    this.open = open;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-gate-set': GateSetEvent;
  }
}
