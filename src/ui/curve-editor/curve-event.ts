// Sent by the editor of a curve: the curve as it is now.

import type { Curve } from '../../shop/schema/curve-schema.ts';
import { DcEvent } from '../dc-event.ts';

export class CurveEvent extends DcEvent {
  static readonly type = 'dc-curve';

  readonly curve: Curve;

  constructor(curve: Curve) {
    super(CurveEvent.type);
    this.curve = curve;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-curve': CurveEvent;
  }
}
