// Draws a long list in portions, one a frame, so that no frame takes long. What a list showed before
// stays until its turn comes.

import type { LitElement, ReactiveController } from 'lit';
import { forgetFrame, inOwnFrame } from './one-a-frame.ts';

export class Portions<T> implements ReactiveController {
  readonly #host: LitElement;
  readonly #size: number;
  #items: T[] = [];
  /** How many are as they are to be, and of how many. */
  #fresh = 0;
  #total = 0;
  #isBegun = false;

  /**
   * @param host - what draws the list
   * @param size - how many are drawn in a frame
   */
  constructor(host: LitElement, size: number) {
    this.#host = host;
    this.#size = size;
    host.addController(this);
  }

  /** Whether everything is as it is to be. */
  get isWhole(): boolean {
    return this.#fresh >= this.#total;
  }

  /** All are to be drawn anew. */
  restart(): void {
    this.#fresh = 0;
    this.#isBegun = false;
  }

  /**
   * Draws the next portion, of which the first is empty: what is drawn but once, such as a table's
   * head, has a frame to itself. The host is asked to go on in the next frame while there is more.
   *
   * @param total - how many there are in all
   * @param draw - draws one, by its place
   * @returns what there is by now, in order
   */
  fill(total: number, draw: (at: number) => T): readonly T[] {
    const end = Math.min(total, this.#fresh + (this.#isBegun ? this.#size : 0));
    this.#isBegun = true;
    this.#items.length = Math.min(this.#items.length, total);
    for (let at = this.#fresh; at < end; at++) this.#items[at] = draw(at);
    this.#fresh = end;
    this.#total = total;
    return this.#items;
  }

  hostUpdated(): void {
    if (this.#fresh < this.#total) inOwnFrame(this.#goOn);
    else forgetFrame(this.#goOn);
  }

  hostDisconnected(): void {
    forgetFrame(this.#goOn);
  }

  readonly #goOn = (): void => this.#host.requestUpdate();
}
