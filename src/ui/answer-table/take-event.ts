// Sent by a table of answers: a row is to be taken over into the shop, or kept beside it.

import { DcEvent } from '../dc-event.ts';

export class TakeEvent extends DcEvent {
  static readonly type = 'dc-take';

  /** Key of the row. */
  readonly key: string;
  readonly how: 'make' | 'keep';

  constructor(key: string, how: 'make' | 'keep') {
    super(TakeEvent.type);
    this.key = key;
    this.how = how;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-take': TakeEvent;
  }
}
