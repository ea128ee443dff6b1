// The shop that is open in this tab: its session, whose every edit is kept, and its place among the
// tabs that show the same shop. A tab that does not lead asks for the lead when it is edited.

import type { Shop } from '../shop/schema/shop-schema.ts';
import type { ShopVersion } from '../shop/store/shop-store.ts';
import type { ShopTabs } from '../shop/store/tab-message.ts';
import type { UnitSystem } from '../units/quantity.ts';
import { follow } from './follow.ts';
import { Lead } from './lead.ts';
import type { Haste } from './record-writer.ts';
import { Session } from './session.ts';
import { sharingParts } from './shared-parts.ts';
import { usuallyOpen } from './usually-open.ts';

/** What the open shop needs of the shelf. */
export interface OpenShopParts {
  readonly tabs?: ShopTabs;
  /** The present time [ms since 1970-01-01]. */
  readonly now: () => number;
  readonly keep: (shop: Shop, versions: readonly ShopVersion[], haste: Haste) => void;
  /** Whether this tab alone writes the shop from now on. */
  readonly lead: (isSole: boolean) => void;
  /** This tab leads now, and had nothing to write. */
  readonly gained: () => void;
  /** The tab that leads does not answer. */
  readonly unanswered: (takeOver: () => void) => void;
}

export class OpenShop {
  readonly id: string;
  readonly session: Session;

  readonly #parts: OpenShopParts;
  readonly #lead: Lead;
  readonly #unfollow: () => void;
  #kept: Shop;
  #before: Shop | undefined;
  /** What was replaced while this tab waits for the lead. */
  #versions: readonly ShopVersion[] = [];
  #isUnwritten = false;

  /**
   * @param id - of the shop
   * @param shop - as it is kept
   * @param units - to begin with
   * @param parts - where it is kept, and the other tabs
   */
  constructor(id: string, shop: Shop, units: UnitSystem, parts: OpenShopParts) {
    this.id = id;
    this.session = new Session(shop, usuallyOpen(shop), units);
    this.#parts = parts;
    this.#kept = shop;
    this.#lead = new Lead(parts.tabs, id, {
      gained: () => this.#onGained(),
      lost: () => parts.lead(false),
      unanswered: () => parts.unanswered(() => this.#lead.takeOver()),
    });
    const { history } = this.session;
    this.#unfollow = follow(
      () => ({ now: history.present.value, before: history.previous.value }),
      ({ now, before }) => this.#onChange(now, before),
    );
  }

  /** Whether an edit of this tab waits for the lead. */
  get isUnwritten(): boolean {
    return this.#isUnwritten;
  }

  /** Takes over what another tab has written. */
  adopt(shop: Shop): void {
    const shared = sharingParts(this.#kept, shop);
    if (shared === this.#kept) return;
    this.#kept = shared;
    this.session.edit(() => shared);
  }

  /** Lets another tab write. */
  handOver(): void {
    this.#lead.handOver();
  }

  /** Gives what waits for the lead to be written, whoever leads. */
  settle(): void {
    if (this.#isUnwritten) this.#write();
  }

  /** Leaves the shop: its edits are kept no longer. */
  close(): void {
    this.settle();
    this.#unfollow();
    this.#lead.leave();
  }

  /** The edits of a drag leave nothing behind but its end. */
  #onChange(now: Shop, before: Shop | undefined): void {
    const isStep = before !== this.#before;
    this.#before = before;
    if (now === this.#kept) return;
    if (isStep) {
      const version = { aside: this.#parts.now(), cause: 'edit', document: this.#kept } as const;
      this.#versions = [...this.#versions, version];
    }
    this.#kept = now;
    if (this.#lead.leads) {
      this.#write(isStep ? 'now' : 'soon');
      return;
    }
    this.#isUnwritten = true;
    this.#lead.ask();
  }

  #onGained(): void {
    this.#parts.lead(true);
    if (this.#isUnwritten) this.#write();
    else this.#parts.gained();
  }

  #write(haste: Haste = 'now'): void {
    this.#isUnwritten = false;
    this.#parts.keep(this.#kept, this.#versions, haste);
    this.#versions = [];
  }
}
