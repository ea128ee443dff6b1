// Sent when other collectors are to be compared.

import { DcEvent } from '../dc-event.ts';

export class CandidatesEvent extends DcEvent {
  static readonly type = 'dc-candidates';

  /** Keys of those that are left out. */
  readonly left: readonly string[];

  constructor(left: readonly string[]) {
    super(CandidatesEvent.type);
    this.left = left;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-candidates': CandidatesEvent;
  }
}
