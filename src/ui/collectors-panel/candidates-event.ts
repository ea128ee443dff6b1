// Sent when other collectors are to be compared, or with other gates open.

import { DcEvent } from '../dc-event.ts';

export class CandidatesEvent extends DcEvent {
  static readonly type = 'dc-candidates';

  /** Names of those that are left out. */
  readonly left: readonly string[];
  /** The state of the gates in the picture. */
  readonly state: string;

  constructor(left: readonly string[], state: string) {
    super(CandidatesEvent.type);
    this.left = left;
    this.state = state;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-candidates': CandidatesEvent;
  }
}
