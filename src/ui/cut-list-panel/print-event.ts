// Asks for the shop's sheet to be printed.

import { DcEvent } from '../dc-event.ts';

export class PrintEvent extends DcEvent {
  static readonly type = 'dc-print';

  constructor() {
    super(PrintEvent.type);
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-print': PrintEvent;
  }
}
