// Sent by the plot of a curve: one of its points was moved.

import type { CurvePoint } from '../../curve/curve-data.ts';
import { DcEvent } from '../dc-event.ts';

export class PointMoveEvent extends DcEvent {
  static readonly type = 'dc-point-move';

  /** Which one, counted from 0. */
  readonly index: number;
  readonly point: CurvePoint;
  /** The same as long as one hand or one run of keys moves it: one step to undo. */
  readonly run: number;

  constructor(index: number, point: CurvePoint, run: number) {
    super(PointMoveEvent.type);
    this.index = index;
    this.point = point;
    this.run = run;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-point-move': PointMoveEvent;
  }
}
