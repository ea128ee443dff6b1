// Sent by the fields of an axis: another value at one of its marks, another unit,
// or another spacing of its values.

import type { AxisScale } from '../../plot/chart-trace/chart-mapping.ts';
import type { UnitName } from '../../units/unit.ts';
import { DcEvent } from '../dc-event.ts';

/** What was changed. */
export type AxisChange =
  | { readonly kind: 'value'; readonly index: 0 | 1; readonly value: number | undefined }
  | { readonly kind: 'unit'; readonly unit: UnitName }
  | { readonly kind: 'scale'; readonly scale: AxisScale };

export class AxisEvent extends DcEvent {
  static readonly type = 'dc-axis';

  readonly change: AxisChange;

  constructor(change: AxisChange) {
    super(AxisEvent.type);
    this.change = change;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-axis': AxisEvent;
  }
}
