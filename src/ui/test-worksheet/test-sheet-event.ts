// Sent by the worksheet whenever something was typed: the sheet as it is now, to be kept.

import type { TestSheet } from '../../shop/schema/test-schema.ts';
import { DcEvent } from '../dc-event.ts';

export class TestSheetEvent extends DcEvent {
  static readonly type = 'dc-test-sheet';

  readonly test: TestSheet;

  constructor(test: TestSheet) {
    super(TestSheetEvent.type);
    this.test = test;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-test-sheet': TestSheetEvent;
  }
}
