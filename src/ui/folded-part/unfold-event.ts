// Sent by a folded part the first time it is unfolded: what it holds is wanted now.

import { DcEvent } from '../dc-event.ts';

export class UnfoldEvent extends DcEvent {
  static readonly type = 'dc-unfold';

  constructor() {
    super(UnfoldEvent.type);
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-unfold': UnfoldEvent;
  }
}
