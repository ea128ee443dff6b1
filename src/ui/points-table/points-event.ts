// Sent by the table of points: other points make the curve now.

import type { CurvePoint } from '../../curve/curve-data.ts';
import { DcEvent } from '../dc-event.ts';

export class PointsEvent extends DcEvent {
  static readonly type = 'dc-points';

  /** At least two, flow strictly rising. */
  readonly points: readonly CurvePoint[];

  constructor(points: readonly CurvePoint[]) {
    super(PointsEvent.type);
    this.points = points;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-points': PointsEvent;
  }
}
