// Sent when something else is said of a run that is to be added.

import type { ReachForm } from '../../state/decisions/reach-form.ts';
import { DcEvent } from '../dc-event.ts';

export class ReachFormEvent extends DcEvent {
  static readonly type = 'dc-reach-form';

  readonly form: ReachForm;

  constructor(form: ReachForm) {
    super(ReachFormEvent.type);
    this.form = form;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-reach-form': ReachFormEvent;
  }
}
