// Sent by the sets of gates: one is to be opened, saved or taken out.

import { DcEvent } from '../dc-event.ts';

/** A saved set, or "shut all", was chosen: just these are to be open. */
export class GateSetEvent extends DcEvent {
  static readonly type = 'dc-gate-set';

  /** Ids of the drops to be open; all others are shut. */
  readonly open: readonly string[];

  constructor(open: readonly string[]) {
    super(GateSetEvent.type);
    this.open = open;
  }
}

/** What is open now is to be saved as a set of this name. */
export class SaveSetEvent extends DcEvent {
  static readonly type = 'dc-save-set';

  readonly name: string;

  constructor(name: string) {
    super(SaveSetEvent.type);
    this.name = name;
  }
}

/** A saved set is to be taken out. */
export class RemoveSetEvent extends DcEvent {
  static readonly type = 'dc-remove-set';

  /** Id of the set. */
  readonly set: string;

  constructor(set: string) {
    super(RemoveSetEvent.type);
    this.set = set;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-gate-set': GateSetEvent;
    'dc-save-set': SaveSetEvent;
    'dc-remove-set': RemoveSetEvent;
  }
}
