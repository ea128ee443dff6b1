// What tabs of one browser tell one another about the shops that they keep.

import type { ShopRecord } from './shop-store.ts';

export type TabMessage =
  /** A record was written. */
  | { readonly kind: 'written'; readonly record: ShopRecord }
  /** A record was taken out. */
  | { readonly kind: 'removed'; readonly id: string }
  /** Whoever leads this shop is asked to hand it over. */
  | { readonly kind: 'ask'; readonly id: string }
  /** The writer of this found something newer in its place, and set that aside as a version. */
  | { readonly kind: 'set aside'; readonly record: ShopRecord };

/** The way to the other tabs. Messages don't come back to their sender. */
export interface TabChannel {
  send(message: TabMessage): void;
  /** Is told of each message of another tab. */
  listen(take: (message: TabMessage) => void): void;
}

/** A place in the queue of tabs that would write one shop. Only the first of them, its leader, may. */
export interface TabPlace {
  /** Lets the next tab lead, and waits for another turn. */
  handOver(): void;
  /** Leads at once, whoever led before. */
  takeOver(): void;
  /** Leaves the queue for good. */
  leave(): void;
}

/** What becomes of a place in the queue. */
export interface TabTurn {
  /** It is this tab's turn to lead. */
  readonly leads: () => void;
  /** Another tab has taken over. */
  readonly lost: () => void;
}

/** The other tabs of this browser. */
export interface ShopTabs extends TabChannel {
  /** Waits for the turn to lead a shop. */
  queue(id: string, turn: TabTurn): TabPlace;
}
