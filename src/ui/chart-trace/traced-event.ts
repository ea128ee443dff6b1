// Sent when a traced chart is taken: its points, and what is to become of those of the curve.

import type { CurvePoint } from '../../curve/curve-data.ts';
import { DcEvent } from '../dc-event.ts';

export class TracedEvent extends DcEvent {
  static readonly type = 'dc-traced';

  /** By rising flow. */
  readonly points: readonly CurvePoint[];
  /** Whether they stand in the place of the curve's points, or come to them. */
  readonly how: 'replace' | 'add';

  constructor(points: readonly CurvePoint[], how: 'replace' | 'add') {
    super(TracedEvent.type);
    this.points = points;
    this.how = how;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-traced': TracedEvent;
  }
}
