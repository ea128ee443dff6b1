// Sent by a text field when it is left with another text.

import { DcEvent } from '../dc-event.ts';

export class TextEvent extends DcEvent {
  static readonly type = 'dc-text';

  /** Without spaces at its ends; undefined where it was emptied. */
  readonly value: string | undefined;

  constructor(value: string | undefined) {
    super(TextEvent.type);
    this.value = value;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-text': TextEvent;
  }
}
