// Lets a panel read the session: it says what it reads, and is drawn anew when that changes.

import { ContextEvent } from '@lit/context';
import type { LitElement, ReactiveController } from 'lit';
import { follow } from '../state/follow.ts';
import type { Session } from '../state/session.ts';
import { sessionContext } from './session-context.ts';
import { stillness } from './stillness.ts';
import {
  AS_IT_CAN,
  IN_STEP,
  type Rhythm,
  rhythmOf,
  TO_BE_READ,
  type Turn,
  Turns,
} from './turns.ts';

/**
 * When a panel is drawn anew, so that a frame of a drag doesn't pay for everything. `at once`: in the
 * same frame. `when seen`: at once, but out of sight only when the gates have come to rest. All others
 * as when seen, but while one change follows another `in step` only at every second of them, a `turn` once
 * in a round of the changes between, the turns after one another, and what is `to be read` as often. On a
 * slow processor what is drawn `as it can`, `in step` and by `turn` has every third change each.
 */
export type Promptness =
  | 'at once'
  | 'when seen'
  | 'as it can'
  | 'in step'
  | 'to be read'
  | { readonly turn: Turn };

const RHYTHMS: Readonly<Record<Exclude<Promptness, object>, Rhythm | undefined>> = {
  'at once': undefined,
  'when seen': undefined,
  'as it can': AS_IT_CAN,
  'in step': IN_STEP,
  'to be read': TO_BE_READ,
};
/** How long gates and document must stand still before panels out of sight follow [ms]. */
const REST = 200;
/** A panel so near to the window counts as seen. */
const NEAR = '80px';

/** Holds what a panel read; undefined until the page has handed its session over. */
export class SessionController<T> implements ReactiveController {
  value: T | undefined;

  readonly #host: LitElement;
  readonly #read: (session: Session) => T;
  readonly #promptness: Promptness;
  readonly #observer: IntersectionObserver | undefined;
  readonly #turns: Turns | undefined;
  #isSeen = true;
  /** The session that has changed and was not read yet. */
  #missed: Session | undefined;
  /** Called when there is rest; undefined while awake. */
  #wake: (() => void) | undefined;
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
    this.#promptness = promptness;
    const rhythm = rhythmFor(promptness);
    this.#turns = rhythm && new Turns(rhythm, () => this.#catchUp());
    if (promptness !== 'at once') {
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
    if (session) this.#readFrom(session);
  }

  /** Reads what was missed, and goes on counting. */
  #catchUp(): void {
    const missed = this.#missed;
    if (!missed) return;
    this.#stop?.();
    this.#readFrom(missed);
  }

  #readFrom(session: Session): void {
    let isFirst = true;
    const isWords = this.#promptness === 'to be read';
    this.#stop = follow(
      () => {
        // What is not read is not followed: out of sight this sleeps after a change; between turns
        // it hears of the next one.
        const reads = isFirst || (this.#isSeen && (this.#turns?.isTurn() ?? true));
        isFirst = false;
        // A sentence often stays as it is while all else changes, and must not lose count of that.
        if (this.#isSeen && (!reads || isWords)) hearOf(session);
        return reads ? { value: this.#read(session) } : undefined;
      },
      (taken) => {
        this.#missed = taken ? undefined : session;
        if (taken) {
          this.value = taken.value;
          this.#host.requestUpdate();
        } else if (!this.#isSeen) {
          this.#awaitRest(session);
        }
      },
    );
  }

  #end(): void {
    if (this.#wake) stillness.forget(this.#wake);
    this.#wake = undefined;
    this.#turns?.forget();
    this.#stop?.();
    this.#stop = undefined;
    this.#missed = undefined;
  }

  #onSight(entries: readonly IntersectionObserverEntry[]): void {
    this.#isSeen = entries.at(-1)?.isIntersecting ?? true;
    if (this.#isSeen && this.#missed) this.follow(this.#missed);
  }

  /** Follows again as soon as gates and document have stood still for a while. */
  #awaitRest(session: Session): void {
    noteChangesOf(session);
    this.#wake = () => this.follow(session);
    stillness.afterChange(this.#wake, REST);
  }
}

const noted = new WeakSet<Session>();

/** Has the changes of a session noted, once for all the panels that sleep. */
function noteChangesOf(session: Session): void {
  if (noted.has(session)) return;
  noted.add(session);
  follow(
    () => hearOf(session),
    () => stillness.noteChange(),
  );
}

/** Reads what all else follows from, and computes nothing. */
function hearOf({ shownGates, shop, selection, units }: Session): void {
  void [shownGates.value, shop.value, selection.value, units.value];
}

function rhythmFor(promptness: Promptness): Rhythm | undefined {
  if (typeof promptness === 'object') return rhythmOf(promptness.turn);
  return RHYTHMS[promptness];
}
