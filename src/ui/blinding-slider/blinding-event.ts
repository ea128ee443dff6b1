// Sent by the blinding slider: how blind the filter is now.

import { DcEvent } from '../dc-event.ts';

export class BlindingEvent extends DcEvent {
  static readonly type = 'dc-blinding';

  /** How many times its clean resistance the filter has [-]. */
  readonly blinding: number;
  /** Whether the slider is still under the hand. */
  readonly move: 'drag' | 'rest';

  constructor(blinding: number, move: 'drag' | 'rest') {
    super(BlindingEvent.type);
    this.blinding = blinding;
    this.move = move;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-blinding': BlindingEvent;
  }
}
