// Draws a long list in portions, one a frame, so that no frame takes long. What a list showed before
// stays until its turn comes.

import type { LitElement, ReactiveController } from 'lit';

export class Portions<T> implements ReactiveController {
  readonly #host: LitElement;
  readonly #size: number;
  #items: T[] = [];
  /** How many are as they are to be, and of how many. */
  #fresh = 0;
  #total = 0;
  #frame = 0;

  /**
   * @param host - what draws the list
   * @param size - how many are drawn in a frame
   */
  constructor(host: LitElement, size: number) {
    this.#host = host;
    this.#size = size;
    host.addController(this);
  }

  /** All are to be drawn anew. */
  restart(): void {
    this.#fresh = 0;
  }

  /**
   * Draws the next portion; the host is asked to go on in the next frame while there is more.
   *
   * @param total - how many there are in all
   * @param draw - draws one, by its place
   * @returns what there is by now, in order
   */
  fill(total: number, draw: (at: number) => T): readonly T[] {
    const end = Math.min(total, this.#fresh + this.#size);
    this.#items.length = Math.min(this.#items.length, total);
    for (let at = this.#fresh; at < end; at++) this.#items[at] = draw(at);
    this.#fresh = end;
    this.#total = total;
    return this.#items;
  }

  hostUpdated(): void {
    cancelAnimationFrame(this.#frame);
    if (this.#fresh < this.#total) {
      this.#frame = requestAnimationFrame(() => this.#host.requestUpdate());
    }
  }

  hostDisconnected(): void {
    cancelAnimationFrame(this.#frame);
  }
}
