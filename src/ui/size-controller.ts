// Keeps an element told of its own size on the page, so that its drawing can be in true pixels. Where
// the reader has text larger than usual, a drawing is enlarged with it: it is laid out in pixels of
// usual text, of which there are then fewer, and shown so many times larger.

import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** The size of text that drawings are laid out for [px]. */
const USUAL_TEXT = 16;

export class SizeController implements ReactiveController {
  /** Inner size of the host, 0 until it has been laid out [px of usual text]. */
  width = 0;
  height = 0;
  /** How many times its usual size the page's text is [-]. */
  scale = 1;

  readonly #host: ReactiveControllerHost & HTMLElement;
  #frame = 0;
  #size = { width: 0, height: 0 };
  readonly #observer = new ResizeObserver((entries) => {
    const own = entries.find(({ target }) => target === this.#host);
    if (own) this.#size = own.contentRect;
    this.#take();
  });

  constructor(host: ReactiveControllerHost & HTMLElement) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    this.#observer.observe(this.#host);
    // The page grows or shrinks with its text, also where the host keeps its size.
    this.#observer.observe(document.documentElement);
  }

  hostDisconnected(): void {
    this.#observer.disconnect();
    cancelAnimationFrame(this.#frame);
  }

  /** Takes the size that the host has now, without waiting for a frame. */
  measure(): void {
    const { width, height } = this.#host.getBoundingClientRect();
    this.#size = { width, height };
    this.#take();
  }

  #take(): void {
    const scale = textScale();
    const width = this.#size.width / scale;
    const height = this.#size.height / scale;
    if (width === this.width && height === this.height && scale === this.scale) return;
    this.width = width;
    this.height = height;
    this.scale = scale;
    // At the next frame: drawn at once, it could change a size that is just being reported.
    cancelAnimationFrame(this.#frame);
    this.#frame = requestAnimationFrame(() => this.#host.requestUpdate());
  }
}

function textScale(): number {
  const { fontSize } = getComputedStyle(document.documentElement);
  return Number.parseFloat(fontSize) / USUAL_TEXT;
}
