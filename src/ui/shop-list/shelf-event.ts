// Sent up when something is wanted of the shelf of shops.

import type { Shop } from '../../shop/schema/shop-schema.ts';
import type { ShopVersion } from '../../shop/store/shop-store.ts';
import { DcEvent } from '../dc-event.ts';

/** What is wanted. */
export type ShelfWish =
  | { readonly kind: 'list' }
  | { readonly kind: 'start' }
  | { readonly kind: 'back' }
  | { readonly kind: 'demo' }
  | { readonly kind: 'file'; readonly file: File }
  | { readonly kind: 'open'; readonly id: string }
  | { readonly kind: 'rename'; readonly id: string; readonly name: string }
  | { readonly kind: 'duplicate'; readonly id: string }
  /** A shop to be kept beside the open one, and what is other in it. */
  | { readonly kind: 'variant'; readonly shop: Shop; readonly words: string }
  | { readonly kind: 'download'; readonly id: string }
  | { readonly kind: 'download all' }
  | { readonly kind: 'link'; readonly id: string }
  | { readonly kind: 'save in place' }
  | { readonly kind: 'stop saving' }
  | { readonly kind: 'remove'; readonly id: string }
  | { readonly kind: 'restore'; readonly id: string; readonly version: ShopVersion }
  | { readonly kind: 'download version'; readonly version: ShopVersion };

export class ShelfEvent extends DcEvent {
  static readonly type = 'dc-shelf';

  readonly wish: ShelfWish;

  constructor(wish: ShelfWish) {
    super(ShelfEvent.type);
    this.wish = wish;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-shelf': ShelfEvent;
  }
}
