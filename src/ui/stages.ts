// Draws a long answer stage by stage, each in a frame of its own, so that no frame takes long.

import { type LitElement, noChange, type ReactiveController, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { forgetFrame, inOwnFrame } from './one-a-frame.ts';

export class Stages implements ReactiveController {
  readonly #host: LitElement;
  readonly #last: number;
  #stage = 0;

  /**
   * @param host - what draws the answer
   * @param last - number of the last stage; the first is 0
   */
  constructor(host: LitElement, last: number) {
    this.#host = host;
    this.#last = last;
    host.addController(this);
  }

  /** The next answer is drawn from the first stage on. */
  restart(): void {
    this.#stage = 0;
  }

  /**
   * Draws a part. What was there stays until its stage comes, and from then on until something changes
   * that it is drawn from.
   *
   * @param stage - from which on it is drawn
   * @param from - what it is drawn from
   * @param draw - draws it
   * @returns a value for a template
   */
  readonly part = (stage: number, from: readonly unknown[], draw: () => TemplateResult): unknown =>
    this.#stage < stage ? noChange : guard([...from], draw);

  hostUpdated(): void {
    if (this.#stage >= this.#last) return;
    // The first stage was drawn between two frames, so it takes part of the one that comes.
    if (this.#stage === 0) inOwnFrame(this.#skip);
    else inOwnFrame(this.#goOn);
  }

  readonly #skip = (): void => inOwnFrame(this.#goOn);

  readonly #goOn = (): void => {
    this.#stage += 1;
    this.#host.requestUpdate();
  };

  hostDisconnected(): void {
    forgetFrame(this.#skip);
    forgetFrame(this.#goOn);
  }
}
