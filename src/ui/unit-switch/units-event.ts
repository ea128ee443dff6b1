// Sent by the unit switch.

import type { UnitSystem } from '../../units/quantity.ts';
import { DcEvent } from '../dc-event.ts';

export class UnitsEvent extends DcEvent {
  static readonly type = 'dc-units';

  readonly units: UnitSystem;

  constructor(units: UnitSystem) {
    super(UnitsEvent.type);
    this.units = units;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-units': UnitsEvent;
  }
}
