// Sent when a picture was opened to trace from.

import { DcEvent } from '../dc-event.ts';
import type { ChartImage } from './chart-image.ts';

export class PictureEvent extends DcEvent {
  static readonly type = 'dc-picture';

  readonly image: ChartImage;

  constructor(image: ChartImage) {
    super(PictureEvent.type);
    this.image = image;
  }
}

declare global {
  interface HTMLElementEventMap {
    'dc-picture': PictureEvent;
  }
}
