// Sent by the picture of a chart: a place was meant for the next mark, a mark was moved, chosen or
// taken away.

import type { Place } from '../../plot/frame.ts';
import type { MarkName } from '../../plot/chart-trace/traced-chart.ts';
import { DcEvent } from '../dc-event.ts';

/** A place for what comes next. */
export class SpotEvent extends DcEvent {
  static readonly type = 'dc-spot';

  /** On the picture [px] */
  readonly place: Place;

  constructor(place: Place) {
    super(SpotEvent.type);
    this.place = place;
  }
}

/** What is to become of a mark. */
export type MarkWish =
  | { readonly kind: 'hold' }
  /** While a drag goes on, `ended` is false. */
  | { readonly kind: 'move'; readonly place: Place; readonly ended: boolean }
  | { readonly kind: 'remove' };

export class MarkEvent extends DcEvent {
  static readonly type = 'dc-mark';

  /** Undefined lets go of the one that is held. */
  readonly mark: MarkName | undefined;
  readonly wish: MarkWish;

  constructor(mark: MarkName | undefined, wish: MarkWish) {
    super(MarkEvent.type);
    this.mark = mark;
    this.wish = wish;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-spot': SpotEvent;
    'dc-mark': MarkEvent;
  }
}
