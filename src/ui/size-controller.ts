// Keeps an element told of its own size on the page, so that its drawing can be in true pixels.

import type { ReactiveController, ReactiveControllerHost } from 'lit';

export class SizeController implements ReactiveController {
  /** Inner size of the host, 0 until it has been laid out [px]. */
  width = 0;
  height = 0;

  readonly #host: ReactiveControllerHost & HTMLElement;
  #frame = 0;
  readonly #observer = new ResizeObserver(([entry]) => {
    if (entry) this.#take(entry.contentRect);
  });

  constructor(host: ReactiveControllerHost & HTMLElement) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    this.#observer.observe(this.#host);
  }

  hostDisconnected(): void {
    this.#observer.disconnect();
    cancelAnimationFrame(this.#frame);
  }

  #take({ width, height }: DOMRectReadOnly): void {
    if (width === this.width && height === this.height) return;
    this.width = width;
    this.height = height;
    // At the next frame: drawn at once, it could change a size that is just being reported.
    cancelAnimationFrame(this.#frame);
    this.#frame = requestAnimationFrame(() => this.#host.requestUpdate());
  }
}
