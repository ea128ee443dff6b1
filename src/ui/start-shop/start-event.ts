// Sent by the start of a new shop: it is ready to be opened.

import type { Shop } from '../../shop/schema/shop-schema.ts';
import { DcEvent } from '../dc-event.ts';

export class StartEvent extends DcEvent {
  static readonly type = 'dc-start';

  readonly shop: Shop;

  constructor(shop: Shop) {
    super(StartEvent.type);
    this.shop = shop;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-start': StartEvent;
  }
}
