// Lets a panel read the session: it says what it reads, and is drawn anew when that changes.

import { ContextEvent } from '@lit/context';
import type { LitElement, ReactiveController } from 'lit';
import { follow } from '../state/follow.ts';
import type { Session } from '../state/session.ts';
import { sessionContext } from './session-context.ts';

/** Holds what a panel read; undefined until the page has handed its session over. */
export class SessionController<T> implements ReactiveController {
  value: T | undefined;

  readonly #host: LitElement;
  readonly #read: (session: Session) => T;
  #stop: (() => void) | undefined;
  #unsubscribe: (() => void) | undefined;

  /**
   * @param host - the panel
   * @param read - reads signals of the session; runs again whenever one of them changes
   */
  constructor(host: LitElement, read: (session: Session) => T) {
    this.#host = host;
    this.#read = read;
    host.addController(this);
  }

  hostConnected(): void {
    const take = (session: Session | undefined, unsubscribe?: () => void) => {
      this.#unsubscribe = unsubscribe;
      this.follow(session);
    };
    this.#host.dispatchEvent(new ContextEvent(sessionContext, this.#host, take, true));
  }

  hostDisconnected(): void {
    this.#unsubscribe?.();
    this.#stop?.();
    this.#stop = undefined;
  }

  /** Reads this session from now on; the page itself says which, panels get it from the page. */
  follow(session: Session | undefined): void {
    this.#stop?.();
    this.#stop = undefined;
    if (!session) return;
    this.#stop = follow(
      () => this.#read(session),
      (value) => {
        this.value = value;
        this.#host.requestUpdate();
      },
    );
  }
}
