// Sent by the table of power points: others hold now.

import type { PowerPoint } from '../../curve/curve-data.ts';
import { DcEvent } from '../dc-event.ts';

export class PowerEvent extends DcEvent {
  static readonly type = 'dc-power';

  /** At least two, flow strictly rising. */
  readonly power: readonly PowerPoint[];

  constructor(power: readonly PowerPoint[]) {
    super(PowerEvent.type);
    this.power = power;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-power': PowerEvent;
  }
}
