// Sent by a drop's row when one of its gate's buttons is pressed.

import { DcEvent } from '../dc-event.ts';

/** What is to be done with the gate; `only` opens it and shuts all others. */
export type GateChoice = 'open' | 'shut' | 'only';

export class GateChoiceEvent extends DcEvent {
  static readonly type = 'dc-gate-choice';

  readonly choice: GateChoice;

  constructor(choice: GateChoice) {
    super(GateChoiceEvent.type);
    this.choice = choice;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-gate-choice': GateChoiceEvent;
  }
}
