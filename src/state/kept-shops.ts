// What this browser keeps: the list of its shops, in step with the store and with other tabs.

import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals-core';
import type { Shop } from '../shop/schema/shop-schema.ts';
import type { ShopRecord, ShopStore, ShopVersion } from '../shop/store/shop-store.ts';
import { type StoreFailure, storeFailure } from '../shop/store/store-failure.ts';
import type { ShopTabs, TabMessage } from '../shop/store/tab-message.ts';
import { type Haste, RecordWriter } from './record-writer.ts';
import { isMigrated, type Shelved, shelved } from './shelved.ts';

export interface KeptShopsParts {
  readonly store: ShopStore;
  /** The other tabs of the browser; left out: there are none. */
  readonly tabs?: ShopTabs;
  /** What the store held when the page was opened. */
  readonly records: readonly ShopRecord[];
  /** The present time [ms since 1970-01-01]. */
  readonly now: () => number;
}

/** What is told of the shops. */
export interface KeptShopsEars {
  /** Something could not be written, for the first time since all was well. */
  readonly failed: (failure: StoreFailure) => void;
  /** What other tabs have written can't be read. */
  readonly unread: (failure: StoreFailure) => void;
  /** What could not be written is written now. */
  readonly savedAgain: () => void;
  /** Two tabs wrote one shop at once, and this was set aside. */
  readonly setAside: (record: ShopRecord) => void;
  /** Another tab wants to write this shop. */
  readonly asked: (id: string) => void;
  /** Whether an edit of this tab still has to be written over this shop. */
  readonly isUnwritten: (id: string) => boolean;
  /** Another tab has written this. */
  readonly followed: (entry: Shelved) => void;
}

export class KeptShops {
  /** New ones first, then by when they were last written before the page was opened. */
  readonly shops: ReadonlySignal<readonly Shelved[]>;

  readonly #parts: KeptShopsParts;
  readonly #ears: KeptShopsEars;
  readonly #shops: Signal<readonly Shelved[]>;
  readonly #writer: RecordWriter;
  #isRefused = false;

  /**
   * @param parts - the store, what it held, and the other tabs
   * @param ears - are told what happens
   */
  constructor(parts: KeptShopsParts, ears: KeptShopsEars) {
    this.#parts = parts;
    this.#ears = ears;
    this.#writer = new RecordWriter(parts.store, {
      written: (record, over) => this.#onWritten(record, over),
      removed: (id) => this.#onSaved({ kind: 'removed', id }),
      failed: (failure) => this.#onFailed(failure),
    });
    for (const record of parts.records) this.#writer.know(record);
    this.#shops = signal(parts.records.toSorted((a, b) => b.written - a.written).map(shelved));
    this.shops = computed(() => this.#shops.value);
    parts.tabs?.listen((message) => this.#onMessage(message));
  }

  find(id: string): Shelved | undefined {
    return this.#shops.peek().find(({ record }) => record.id === id);
  }

  /** Keeps a shop. What an older version of the program or something odd had kept is set aside. */
  keep(id: string, shop: Shop, versions: readonly ShopVersion[] = [], haste: Haste = 'now'): void {
    const former = this.find(id);
    const written = this.#parts.now();
    const record = { id, document: shop, written, revision: this.#writer.revision(id) };
    this.#put({ kind: 'shop', record, shop });
    const old: readonly ShopVersion[] =
      former && isMigrated(former)
        ? [{ aside: written, cause: 'migration', document: former.record.document }]
        : [];
    this.#writer.write(record, [...old, ...versions], haste);
  }

  /**
   * Takes a shop out.
   *
   * @returns puts it back where it was
   */
  remove(entry: Shelved): () => void {
    const place = this.#shops.peek().indexOf(entry);
    this.#shops.value = this.#shops.peek().toSpliced(place, 1);
    this.#writer.remove(entry.record.id);
    return () => {
      this.#shops.value = this.#shops.peek().toSpliced(place, 0, entry);
      this.#writer.write(entry.record);
    };
  }

  /** What was set aside of a shop, the latest first. */
  versions(id: string): Promise<readonly ShopVersion[]> {
    return this.#parts.store.versions(id);
  }

  /** Says whether this tab alone writes a shop. */
  lead(id: string, isSole: boolean): void {
    this.#writer.lead(id, isSole);
  }

  /** Writes what waits for it, a drag's last state too. */
  begin(): void {
    this.#writer.begin();
  }

  /** Begins to write everything before it returns: the page is about to go. */
  flush(): void {
    this.#writer.flush();
  }

  /** Kept when everything is written or has failed. */
  idle(): Promise<void> {
    return this.#writer.idle();
  }

  /** Whether anything of a shop is not written yet. */
  isWaiting(id: string): boolean {
    return this.#writer.isWaiting(id);
  }

  /** Looks for what another tab may have written while this one slept. */
  async catchUp(id: string): Promise<void> {
    try {
      const record = await this.#parts.store.read(id);
      if (record) this.#follow(record);
    } catch (error) {
      this.#ears.unread(storeFailure(error));
    }
  }

  /** Puts an entry on the shelf, new ones first. */
  #put(entry: Shelved): void {
    const shops = this.#shops.peek();
    const place = shops.findIndex((each) => each.record.id === entry.record.id);
    this.#shops.value = place === -1 ? [entry, ...shops] : shops.with(place, entry);
  }

  #onWritten(record: ShopRecord, over: ShopRecord | undefined): void {
    this.#onSaved({ kind: 'written', record });
    if (!over) return;
    this.#ears.setAside(over);
    this.#parts.tabs?.send({ kind: 'set aside', record: over });
  }

  #onSaved(message: TabMessage): void {
    if (this.#isRefused) this.#ears.savedAgain();
    this.#isRefused = false;
    this.#parts.tabs?.send(message);
  }

  #onFailed(failure: StoreFailure): void {
    if (!this.#isRefused) this.#ears.failed(failure);
    this.#isRefused = true;
  }

  #onMessage(message: TabMessage): void {
    switch (message.kind) {
      case 'ask':
        this.#ears.asked(message.id);
        return;
      case 'written':
        this.#follow(message.record);
        return;
      case 'removed':
        this.#shops.value = this.#shops.peek().filter(({ record }) => record.id !== message.id);
        return;
      case 'set aside':
        this.#ears.setAside(message.record);
        return;
      default:
        message satisfies never;
    }
  }

  /** Follows what another tab has written, but where something of this tab still has to be. */
  #follow(record: ShopRecord): void {
    const { id, revision = 0 } = record;
    if (revision <= this.#writer.revision(id)) return;
    if (this.#writer.isWaiting(id) || this.#ears.isUnwritten(id)) return;
    this.#writer.know(record);
    const entry = shelved(record);
    this.#put(entry);
    this.#ears.followed(entry);
  }
}
