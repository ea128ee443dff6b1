// Sent by a quantity field: what was typed was understood, and it is another amount than before.

import { DcEvent } from '../dc-event.ts';

export class QuantityEvent extends DcEvent {
  static readonly type = 'dc-quantity';

  /** In SI, temperature in °C; undefined where an optional field was emptied. */
  readonly value: number | undefined;

  constructor(value: number | undefined) {
    super(QuantityEvent.type);
    this.value = value;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-quantity': QuantityEvent;
  }
}
