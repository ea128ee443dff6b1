// Sent when all gates together are to move somewhere.

import type { GatePositions } from '../../state/gate-positions.ts';
import { DcEvent } from '../dc-event.ts';

/** How they get there: as after a click, or evenly over some time [ms]. */
export type GatePace = 'usual' | { readonly evenly: number };

export class GatesEvent extends DcEvent {
  static readonly type = 'dc-gates';

  readonly gates: GatePositions;
  readonly pace: GatePace;

  constructor(gates: GatePositions, pace: GatePace) {
    super(GatesEvent.type);
    this.gates = gates;
    this.pace = pace;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-gates': GatesEvent;
  }
}
