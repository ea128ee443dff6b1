// Sent by the outline and the buttons under it.

import type { Part } from '../../state/selected-part.ts';
import { DcEvent } from '../dc-event.ts';

/** A part is to be looked at, or none. */
export class PartEvent extends DcEvent {
  static readonly type = 'dc-part';
  readonly part: Part | undefined;

  constructor(part: Part | undefined) {
    super(PartEvent.type);
    this.part = part;
  }
}

/** Something is to be done with the part that is looked at. */
export class PartActionEvent extends DcEvent {
  static readonly type = 'dc-part-action';
  /** Id of the action. */
  readonly action: string;

  constructor(action: string) {
    super(PartActionEvent.type);
    this.action = action;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-part': PartEvent;
    'dc-part-action': PartActionEvent;
  }
}
