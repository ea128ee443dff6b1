// Sent when the states tried so far are to be forgotten.

import { DcEvent } from '../dc-event.ts';

export class ClearTrailEvent extends DcEvent {
  static readonly type = 'dc-clear-trail';

  constructor() {
    super(ClearTrailEvent.type);
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-clear-trail': ClearTrailEvent;
  }
}
