// Sent by a form: an edit of the shop that it asks for. Whoever holds the shop makes it, and says at
// once what would be wrong with it, so that the form can say so where it was typed.

import type { ShopEdit } from '../../shop/edits/change.ts';
import type { Problem } from '../../shop/opening/problem.ts';
import { DcEvent } from '../dc-event.ts';

export class ShopEditEvent extends DcEvent {
  static readonly type = 'dc-shop-edit';

  readonly edit: ShopEdit;
  /** Edits that follow one another with the same key are undone as one. */
  readonly mergeKey: string | undefined;
  /** What would be wrong after the edit; then it was not made. */
  problems: readonly Problem[] = [];

  constructor(edit: ShopEdit, mergeKey?: string) {
    super(ShopEditEvent.type);
    this.edit = edit;
    this.mergeKey = mergeKey;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-shop-edit': ShopEditEvent;
  }
}
