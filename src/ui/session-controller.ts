// Lets a panel read the session: it says what it reads, and is drawn anew when that changes.

import { ContextEvent } from '@lit/context';
import type { LitElement, ReactiveController } from 'lit';
import { follow } from '../state/follow.ts';
import type { Session } from '../state/session.ts';
import { sessionContext } from './session-context.ts';

/**
 * When a panel is drawn anew: at once; or while it is out of sight only once the gates have come to
 * rest, so that a drag pays for nothing that nobody sees.
 */
export type Promptness = 'at once' | 'when seen';

/** How long gates must stand still before panels out of sight follow [ms]. */
const REST = 200;
/** A panel so near to the window counts as seen. */
const NEAR = '80px';

/** Holds what a panel read; undefined until the page has handed its session over. */
export class SessionController<T> implements ReactiveController {
  value: T | undefined;

  readonly #host: LitElement;
  readonly #read: (session: Session) => T;
  readonly #observer: IntersectionObserver | undefined;
  #isSeen = true;
  /** The session that has changed unseen. */
  #missed: Session | undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #stop: (() => void) | undefined;
  #unsubscribe: (() => void) | undefined;

  /**
   * @param host - the panel
   * @param read - reads signals of the session; runs again whenever one of them changes
   * @param promptness - when the panel is drawn anew
   */
  constructor(host: LitElement, read: (session: Session) => T, promptness: Promptness = 'at once') {
    this.#host = host;
    this.#read = read;
    if (promptness === 'when seen') {
      this.#observer = new IntersectionObserver((entries) => this.#onSight(entries), {
        rootMargin: NEAR,
      });
    }
    host.addController(this);
  }

  hostConnected(): void {
    const take = (session: Session | undefined, unsubscribe?: () => void) => {
      this.#unsubscribe = unsubscribe;
      this.follow(session);
    };
    this.#host.dispatchEvent(new ContextEvent(sessionContext, this.#host, take, true));
    this.#observer?.observe(this.#host);
  }

  hostDisconnected(): void {
    this.#unsubscribe?.();
    this.#observer?.disconnect();
    this.#end();
  }

  /** Reads this session from now on; the page itself says which, panels get it from the page. */
  follow(session: Session | undefined): void {
    this.#end();
    if (!session) return;
    let isFirst = true;
    this.#stop = follow(
      () => {
        // What is not read is not followed, so after a change out of sight this sleeps.
        const reads = isFirst || this.#isSeen;
        isFirst = false;
        return reads ? { value: this.#read(session) } : undefined;
      },
      (taken) => {
        if (taken) {
          this.value = taken.value;
          this.#host.requestUpdate();
        } else {
          this.#missed = session;
          this.#catchUp(session);
        }
      },
    );
  }

  #end(): void {
    clearTimeout(this.#timer);
    this.#stop?.();
    this.#stop = undefined;
    this.#missed = undefined;
  }

  #onSight(entries: readonly IntersectionObserverEntry[]): void {
    this.#isSeen = entries.at(-1)?.isIntersecting ?? true;
    if (this.#isSeen && this.#missed) this.follow(this.#missed);
  }

  /** Follows again as soon as the gates have stood still for a while. */
  #catchUp(session: Session): void {
    const gates = session.shownGates.peek();
    this.#timer = setTimeout(() => {
      if (session.shownGates.peek() === gates) this.follow(session);
      else this.#catchUp(session);
    }, REST);
  }
}
