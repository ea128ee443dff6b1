// What goes on paper while a shop is shown is its sheet, however the reader prints: by the page's own
// button, by keys or by the browser's menu. The sheet is loaded once the page has come to rest, so that
// it is there when the browser says that it is about to print, and does not wait.

import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Session } from '../../state/session.ts';
import type { layAside } from '../shop-sheet/lay-sheet.ts';

export class SheetOnPaper implements ReactiveController {
  readonly #session: () => Session | undefined;
  #lay: typeof layAside | undefined;
  #takeAway: (() => void) | undefined;

  /**
   * @param host - the page of a shop
   * @param session - whose shop is printed
   */
  constructor(host: ReactiveControllerHost, session: () => Session | undefined) {
    this.#session = session;
    host.addController(this);
  }

  hostConnected(): void {
    addEventListener('beforeprint', this.#onBeforePrint);
  }

  hostDisconnected(): void {
    removeEventListener('beforeprint', this.#onBeforePrint);
    this.#takeAway?.();
  }

  /** Loads what is needed to lay the sheet out. Without it, the page is printed as it is shown. */
  async load(): Promise<void> {
    try {
      ({ layAside: this.#lay } = await import('../shop-sheet/lay-sheet.ts'));
    } catch {
      // No network, and not yet kept on the device.
    }
  }

  /** Prints the sheet. It is laid out first, for browsers that don't say that they are about to print. */
  async print(): Promise<void> {
    await this.load();
    this.#onBeforePrint();
    print();
  }

  readonly #onBeforePrint = (): void => {
    const session = this.#session();
    if (!session || !this.#lay) return;
    this.#takeAway?.();
    this.#takeAway = this.#lay(session, new Date());
  };
}
