// Sent from beside a question: leave off working it out, or work it out again.

import { DcEvent } from '../dc-event.ts';

export class StudyWishEvent extends DcEvent {
  static readonly type = 'dc-study-wish';

  readonly wish: 'cancel' | 'again';

  constructor(wish: 'cancel' | 'again') {
    super(StudyWishEvent.type);
    this.wish = wish;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-study-wish': StudyWishEvent;
  }
}
