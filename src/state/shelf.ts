// All shops of this browser and the one that is open. Every edit of the open one is written at once.
// What is deleted can be put back; what can't be opened is left as it was. (A little over 200 lines:
// every way of changing the list of shops keeps it, the store and the open shop in step.)

import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals-core';
import { changed } from '../shop/edits/change.ts';
import { renameShop } from '../shop/edits/edit-shop.ts';
import { openShop } from '../shop/open-shop.ts';
import type { Shop } from '../shop/schema/shop-schema.ts';
import { shopFile, type TextFile } from '../shop/shop-file.ts';
import type { ShopRecord, ShopStore } from '../shop/store/shop-store.ts';
import type { UnitSystem } from '../units/quantity.ts';
import { follow } from './follow.ts';
import { type Notice, refusedNotice, unreadableNotice } from './notice.ts';
import { RecordWriter } from './record-writer.ts';
import { Session } from './session.ts';
import { type Shelved, shelved, shelvedName } from './shelved.ts';
import { usuallyOpen } from './usually-open.ts';

/** The shop that is open. */
export interface OpenShop {
  readonly id: string;
  readonly session: Session;
}

/** What a shelf is made of. */
export interface ShelfParts {
  readonly store: ShopStore;
  /** What the store held when the page was opened. */
  readonly records: readonly ShopRecord[];
  readonly demo: Shop;
  readonly units: UnitSystem;
  /** Gives ids that no shop has. */
  readonly newId: () => string;
  /** The present time [ms since 1970-01-01]. */
  readonly now: () => number;
  /** Something to say at first. */
  readonly notice?: Notice;
}

export class Shelf {
  /** What is kept: new ones first, then by when they were last written before the page was opened. */
  readonly shops: ReadonlySignal<readonly Shelved[]>;
  readonly open: ReadonlySignal<OpenShop>;
  readonly notice: ReadonlySignal<Notice | undefined>;
  /** Units of the open shop. */
  readonly units: ReadonlySignal<UnitSystem>;

  readonly #parts: ShelfParts;
  readonly #shops: Signal<readonly Shelved[]>;
  readonly #open: Signal<OpenShop>;
  readonly #notice: Signal<Notice | undefined>;
  readonly #writer: RecordWriter;
  #isRefused = false;
  #unfollow: (() => void) | undefined;

  /** @param parts - the store, what it held, and what else is needed from outside */
  constructor(parts: ShelfParts) {
    this.#parts = parts;
    this.#writer = new RecordWriter(parts.store, (reason) => this.#onWritten(reason));
    const entries = parts.records.toSorted((a, b) => b.written - a.written).map(shelved);
    this.#shops = signal(entries);
    this.shops = computed(() => this.#shops.value);
    const unreadable = entries.filter(({ kind }) => kind === 'unreadable').length;
    this.#notice = signal(
      parts.notice ?? (unreadable > 0 ? unreadableNotice(unreadable) : undefined),
    );
    this.notice = computed(() => this.#notice.value);
    const latest = latestOf(entries);
    this.#open = signal(
      latest === undefined
        ? this.#session(parts.newId(), parts.demo, parts.units)
        : this.#session(latest.record.id, latest.shop, parts.units),
    );
    this.open = computed(() => this.#open.value);
    this.units = computed(() => this.#open.value.session.units.value);
  }

  /** Opens a shop of the shelf; nothing happens where there is none of that id. */
  openKept(id: string): void {
    const entry = this.#find(id);
    if (entry?.kind === 'shop' && id !== this.#open.peek().id) this.#show(id, entry.shop);
  }

  /** Opens the demo afresh. It is kept from its first edit on. */
  openDemo(): void {
    this.#show(this.#parts.newId(), this.#parts.demo);
  }

  /** Keeps a new shop and opens it. */
  add(shop: Shop): void {
    const id = this.#parts.newId();
    this.#keep(id, shop);
    this.#show(id, shop);
  }

  /** Keeps and opens the shop of a file; where that is refused, what is open stays open. */
  addFile({ name, text }: TextFile): void {
    const opened = openShop(text);
    if (opened.kind === 'refused') {
      const { problems } = opened;
      this.#notice.value = {
        text: `“${name}” was not opened. What was open stays open.`,
        problems,
      };
      return;
    }
    this.add(opened.shop);
    this.#notice.value = { text: `“${opened.shop.name}” was opened from “${name}”.` };
  }

  /** Keeps a copy of a shop under a name of its own. */
  duplicate(id: string): void {
    const entry = this.#find(id);
    if (entry?.kind !== 'shop') return;
    const name = this.#freshName(`${entry.shop.name}, copy`);
    this.#keep(this.#parts.newId(), changed(entry.shop, { name }));
    this.#notice.value = { text: `Copied as “${name}”.` };
  }

  /** Gives a shop another name; an empty one is no name. */
  rename(id: string, name: string): void {
    const entry = this.#find(id);
    if (entry?.kind !== 'shop' || name.trim() === '') return;
    const rename = renameShop(name.trim());
    if (id === this.#open.peek().id) this.#open.peek().session.edit(rename);
    else this.#keep(id, rename(entry.shop));
  }

  /** Takes a shop off the shelf. The notice says so and can put it back. */
  remove(id: string): void {
    const entry = this.#find(id);
    if (entry === undefined) return;
    const wasOpen = id === this.#open.peek().id;
    const place = this.#shops.peek().indexOf(entry);
    this.#shops.value = this.#shops.peek().toSpliced(place, 1);
    this.#writer.remove(id);
    if (wasOpen) this.#showLatest();
    const undo = () => {
      this.#shops.value = this.#shops.peek().toSpliced(place, 0, entry);
      this.#writer.write(entry.record);
      if (wasOpen) this.openKept(id);
      this.dismiss();
    };
    this.#notice.value = { text: `“${shelvedName(entry)}” was deleted.`, undo };
  }

  /** The file that holds a shop, also one that can't be opened. */
  file(id: string): TextFile | undefined {
    const entry = this.#find(id);
    if (entry !== undefined) return shopFile(shelvedName(entry), entry.record.document);
    const open = this.#open.peek();
    if (open.id !== id) return undefined;
    const shop = open.session.shop.peek();
    return shopFile(shop.name, shop);
  }

  /** Takes the notice away. */
  dismiss(): void {
    this.#notice.value = undefined;
  }

  /** Kept when every edit so far is written. */
  idle(): Promise<void> {
    return this.#writer.idle();
  }

  #find(id: string): Shelved | undefined {
    return this.#shops.peek().find(({ record }) => record.id === id);
  }

  #show(id: string, shop: Shop): void {
    this.#open.value = this.#session(id, shop, this.units.peek());
    this.dismiss();
  }

  #showLatest(): void {
    const latest = latestOf(this.#shops.peek());
    if (latest === undefined) this.openDemo();
    else this.#show(latest.record.id, latest.shop);
  }

  /** A session whose every edit is kept from now on. */
  #session(id: string, shop: Shop, units: UnitSystem): OpenShop {
    this.#unfollow?.();
    const session = new Session(shop, usuallyOpen(shop), units);
    let kept = shop;
    this.#unfollow = follow(
      () => session.shop.value,
      (now) => {
        if (now !== kept) this.#keep(id, now);
        kept = now;
      },
    );
    return { id, session };
  }

  #keep(id: string, shop: Shop): void {
    const record = { id, document: shop, written: this.#parts.now() };
    const entry = { kind: 'shop', record, shop } as const;
    const shops = this.#shops.peek();
    const place = shops.findIndex((each) => each.record.id === id);
    this.#shops.value = place === -1 ? [entry, ...shops] : shops.with(place, entry);
    this.#writer.write(record);
  }

  #freshName(wish: string): string {
    const taken = this.#shops.peek().map(shelvedName);
    let name = wish;
    for (let number = 2; taken.includes(name); number++) name = `${wish} ${number}`;
    return name;
  }

  /** Says once that the browser refuses to keep what is entered, and again after it had kept. */
  #onWritten(reason: string | undefined): void {
    const isNews = reason !== undefined && !this.#isRefused;
    this.#isRefused = reason !== undefined;
    if (isNews) this.#notice.value = refusedNotice(reason);
  }
}

function latestOf(entries: readonly Shelved[]): Extract<Shelved, { kind: 'shop' }> | undefined {
  const shops = entries.filter((entry) => entry.kind === 'shop');
  return shops.toSorted((a, b) => b.record.written - a.record.written)[0];
}
