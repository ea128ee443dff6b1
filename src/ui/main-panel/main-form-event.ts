// Sent when something else is said of the main: which sections it is, or of what family of pipe.

import { DcEvent } from '../dc-event.ts';

/** What counts as the main, and what it is to be made of. */
export interface MainForm {
  /** Ids of sections. */
  readonly sections: readonly string[];
  readonly family: string;
}

export class MainFormEvent extends DcEvent {
  static readonly type = 'dc-main-form';

  readonly form: MainForm;

  constructor(form: MainForm) {
    super(MainFormEvent.type);
    this.form = form;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-main-form': MainFormEvent;
  }
}
