// Sent when something else is said of what may be off.

import type { DoubtForm } from '../../state/decisions/doubt-form.ts';
import { DcEvent } from '../dc-event.ts';

export class DoubtEvent extends DcEvent {
  static readonly type = 'dc-doubt';

  readonly form: DoubtForm;

  constructor(form: DoubtForm) {
    super(DoubtEvent.type);
    this.form = form;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-doubt': DoubtEvent;
  }
}
