// Sent by one throttle setting of the worksheet: as it is now, or gone.

import type { TestSheetRow } from '../../shop/schema/test-schema.ts';
import { DcEvent } from '../dc-event.ts';

export class TestSettingEvent extends DcEvent {
  static readonly type = 'dc-test-setting';

  /** Undefined where it was taken out. */
  readonly row: TestSheetRow | undefined;

  constructor(row: TestSheetRow | undefined) {
    super(TestSettingEvent.type);
    this.row = row;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-test-setting': TestSettingEvent;
  }
}
