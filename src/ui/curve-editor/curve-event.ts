// Sent by the editor of a curve: the curve as it is now.

import type { Curve } from '../../shop/schema/curve-schema.ts';
import { DcEvent } from '../dc-event.ts';

export class CurveEvent extends DcEvent {
  static readonly type = 'dc-curve';

  readonly curve: Curve;
  /** Changes that follow one another with the same key are one step to undo. */
  readonly mergeKey: string | undefined;

  constructor(curve: Curve, mergeKey?: string) {
    super(CurveEvent.type);
    this.curve = curve;
    this.mergeKey = mergeKey;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-curve': CurveEvent;
  }
}
