// Sent by the worksheet when its points are to be those of the curve.

import type { CurvePoint } from '../../curve/curve-data.ts';
import type { TestSheet } from '../../shop/schema/test-schema.ts';
import { DcEvent } from '../dc-event.ts';

export class TestPointsEvent extends DcEvent {
  static readonly type = 'dc-test-points';

  readonly test: TestSheet;
  /** Total suction against flow, in the air of the test, by rising flow. */
  readonly points: readonly CurvePoint[];

  constructor(test: TestSheet, points: readonly CurvePoint[]) {
    super(TestPointsEvent.type);
    this.test = test;
    this.points = points;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-test-points': TestPointsEvent;
  }
}
