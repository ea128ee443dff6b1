// Sent by the shelf of curves: this one is to be the collector's.

import type { Curve } from '../../shop/schema/curve-schema.ts';
import { DcEvent } from '../dc-event.ts';

export class TakeCurveEvent extends DcEvent {
  static readonly type = 'dc-take-curve';

  readonly curve: Curve;

  constructor(curve: Curve) {
    super(TakeCurveEvent.type);
    this.curve = curve;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-take-curve': TakeCurveEvent;
  }
}
