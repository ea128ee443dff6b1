// Lets an element read the reader's own curves: it is drawn anew when they change, there or elsewhere.

import type { LitElement, ReactiveController } from 'lit';
import type { CurveShelf, ShelvedCurve } from '../../state/curve-shelf.ts';
import { follow } from '../../state/follow.ts';
import type { Notice } from '../../state/notice.ts';
import { browserShelf } from './browser-shelf.ts';

export class ShelfController implements ReactiveController {
  curves: readonly ShelvedCurve[] = [];
  notice: Notice | undefined;

  readonly #host: LitElement & { shelf: CurveShelf | undefined };
  #followed: CurveShelf | undefined;
  #stop: (() => void) | undefined;

  /** @param host - the element; a shelf that it is given is read, else that of this browser */
  constructor(host: LitElement & { shelf: CurveShelf | undefined }) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    this.#host.requestUpdate();
  }

  hostDisconnected(): void {
    this.#stop?.();
    this.#followed = undefined;
  }

  hostUpdate(): void {
    const shelf = (this.#host.shelf ??= browserShelf());
    if (shelf === this.#followed || !this.#host.isConnected) return;
    this.#stop?.();
    this.#followed = shelf;
    const stopView = follow(
      () => ({ curves: shelf.curves.value, notice: shelf.notice.value }),
      ({ curves, notice }) => {
        this.curves = curves;
        this.notice = notice;
        this.#host.requestUpdate();
      },
    );
    const stopShelf = shelf.follow();
    this.#stop = () => {
      stopView();
      stopShelf();
    };
  }
}
