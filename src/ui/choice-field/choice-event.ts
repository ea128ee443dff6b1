// Sent by a choice: another entry was chosen.

import { DcEvent } from '../dc-event.ts';

export class ChoiceEvent extends DcEvent {
  static readonly type = 'dc-choice';

  readonly value: string;

  constructor(value: string) {
    super(ChoiceEvent.type);
    this.value = value;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-choice': ChoiceEvent;
  }
}
