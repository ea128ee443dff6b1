// Sent where something of a curve is changed: from the curve as it is by then to the next.

import type { Curve } from '../../shop/schema/curve-schema.ts';
import { DcEvent } from '../dc-event.ts';

export class CurveEditEvent extends DcEvent {
  static readonly type = 'dc-curve-edit';

  readonly edit: (curve: Curve) => Curve;

  constructor(edit: (curve: Curve) => Curve) {
    super(CurveEditEvent.type);
    this.edit = edit;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-curve-edit': CurveEditEvent;
  }
}
