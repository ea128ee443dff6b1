// The other tabs of this browser: messages by BroadcastChannel, and one writer for each shop by Web
// Lock. The browser gives a lock to the next tab when its holder hands over, closes or crashes.

import type { ShopTabs, TabMessage, TabPlace, TabTurn } from './tab-message.ts';

const NAME = 'dropcurve-shops';

/** Tabs that share this page's origin. */
export class BrowserTabs implements ShopTabs {
  readonly #channel = new BroadcastChannel(NAME);

  send(message: TabMessage): void {
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a channel has no target
    this.#channel.postMessage(message);
  }

  listen(take: (message: TabMessage) => void): void {
    this.#channel.addEventListener('message', ({ data }: MessageEvent<TabMessage>) => take(data));
  }

  queue(id: string, turn: TabTurn): TabPlace {
    return new LockPlace(`${NAME}/${id}`, turn);
  }
}

/** Where the browser has no locks, every tab leads; the store then sets aside what is overwritten. */
class LockPlace implements TabPlace {
  readonly #name: string;
  readonly #turn: TabTurn;
  readonly #locks = (navigator as { readonly locks?: LockManager }).locks;
  #release = () => {};
  #waiting = new AbortController();

  constructor(name: string, turn: TabTurn) {
    this.#name = name;
    this.#turn = turn;
    if (this.#locks) this.#request();
    else turn.leads();
  }

  handOver(): void {
    if (!this.#locks) return;
    this.#release();
    this.#request();
  }

  takeOver(): void {
    this.#stopWaiting();
    this.#request({ steal: true });
  }

  leave(): void {
    this.#stopWaiting();
    this.#release();
  }

  #stopWaiting(): void {
    this.#waiting.abort();
    this.#waiting = new AbortController();
  }

  #request(options: LockOptions = { signal: this.#waiting.signal }): void {
    let isHeld = false;
    const held = () =>
      new Promise<void>((resolve) => {
        isHeld = true;
        this.#release = resolve;
        this.#turn.leads();
      });
    this.#locks?.request(this.#name, options, held).catch((error: unknown) => {
      // A page without an origin, such as one from a disk, has no locks to share.
      if (error instanceof DOMException && error.name === 'SecurityError') this.#turn.leads();
      // Given up while waiting, or taken by another tab while held.
      if (!isHeld) return;
      this.#turn.lost();
      this.#request();
    });
  }
}
