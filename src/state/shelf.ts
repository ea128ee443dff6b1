// All shops of this browser and the one that is open. Every edit of the open one is written at once.
// What is deleted can be put back; what can't be opened is left as it was. (A little over 200 lines:
// what can be done with a shop stands here in one place.)

import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals-core';
import { changed } from '../shop/edits/change.ts';
import { renameShop } from '../shop/edits/edit-shop.ts';
import { openShop } from '../shop/open-shop.ts';
import type { Shop } from '../shop/schema/shop-schema.ts';
import { shopFile, type TextFile } from '../shop/shop-file.ts';
import type { ShopVersion } from '../shop/store/shop-store.ts';
import type { UnitSystem } from '../units/quantity.ts';
import { KeptShops, type KeptShopsParts } from './kept-shops.ts';
import {
  type Notice,
  refusedFileNotice,
  savedAgainNotice,
  setAsideNotice,
  unansweredNotice,
  unreadableNotice,
  unreadNotice,
  unsavedNotice,
} from './notice.ts';
import { OpenShop } from './open-shop.ts';
import { asVariant, variantName } from './decisions/variants.ts';
import { latestOf, type Shelved, shelved, shelvedName } from './shelved.ts';

/** What a shelf is made of. */
export interface ShelfParts extends KeptShopsParts {
  readonly demo: Shop;
  readonly units: UnitSystem;
  /** Gives ids that no shop has. */
  readonly newId: () => string;
}

export class Shelf {
  /** What is kept: new ones first, then by when they were last written before the page was opened. */
  readonly shops: ReadonlySignal<readonly Shelved[]>;
  readonly open: ReadonlySignal<OpenShop>;
  readonly notice: ReadonlySignal<Notice | undefined>;
  /** Units of the open shop. */
  readonly units: ReadonlySignal<UnitSystem>;

  readonly #parts: ShelfParts;
  readonly #kept: KeptShops;
  readonly #open: Signal<OpenShop>;
  readonly #notice: Signal<Notice | undefined>;
  /** What is said while there is nothing newer to say, until the reader takes it away. */
  readonly #standing = signal<Notice | undefined>(undefined);

  /** @param parts - the store, what it held, and what else is needed from outside */
  constructor(parts: ShelfParts) {
    this.#parts = parts;
    this.#kept = new KeptShops(parts, {
      failed: (failure) =>
        this.say(unsavedNotice(failure, this.#open.peek().id, () => this.#kept.begin())),
      unread: (failure) => this.say(unreadNotice(failure)),
      savedAgain: () => this.say(savedAgainNotice),
      setAside: (record) => this.say(setAsideNotice(shelvedName(shelved(record)))),
      asked: (id) => void this.#handOver(id),
      isUnwritten: (id) => this.#open.peek().id === id && this.#open.peek().isUnwritten,
      followed: (entry) => this.#onFollowed(entry),
    });
    this.shops = this.#kept.shops;
    const entries = this.shops.peek();
    const unreadable = entries.filter(({ kind }) => kind === 'unreadable').length;
    this.#notice = signal(unreadable > 0 ? unreadableNotice(unreadable) : undefined);
    this.notice = computed(() => this.#notice.value ?? this.#standing.value);
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

  /** Keeps new shops and opens the first of them. */
  add(...shops: readonly Shop[]): void {
    let id = '';
    for (const shop of shops.toReversed()) {
      id = this.#parts.newId();
      this.#kept.keep(id, shop);
    }
    const [first] = shops;
    if (first) this.#show(id, first);
  }

  /** Keeps and opens the shop of a file; where that is refused, what is open stays open. */
  addFile({ name, text }: TextFile): void {
    const opened = openShop(text);
    if (opened.kind === 'refused') {
      this.#notice.value = refusedFileNotice(name, opened.problems);
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
    this.#kept.keep(this.#parts.newId(), changed(entry.shop, { name }));
    this.#notice.value = { text: `Copied as “${name}”.` };
  }

  /** Keeps a shop beside the open one, as a variant of it; what is open stays open. */
  keepVariant(shop: Shop, words: string): void {
    const { id, session } = this.#open.peek();
    const of = session.shop.peek();
    const name = this.#freshName(variantName(of.name, words));
    this.#kept.keep(this.#parts.newId(), asVariant(shop, { id, name: of.name }, name, words));
    if (!this.#find(id)) this.#kept.keep(id, of);
  }

  /** Gives a shop another name; an empty one is no name. */
  rename(id: string, name: string): void {
    const entry = this.#find(id);
    if (entry?.kind !== 'shop' || name.trim() === '') return;
    const rename = renameShop(name.trim());
    if (id === this.#open.peek().id) this.#open.peek().session.edit(rename);
    else this.#kept.keep(id, rename(entry.shop));
  }

  /** Takes a shop off the shelf. The notice says so and can put it back. */
  remove(id: string): void {
    const entry = this.#find(id);
    if (entry === undefined) return;
    const wasOpen = id === this.#open.peek().id;
    const putBack = this.#kept.remove(entry);
    if (wasOpen) this.#showLatest();
    const undo = () => {
      putBack();
      if (wasOpen) this.openKept(id);
      this.dismiss();
    };
    this.#notice.value = { text: `“${shelvedName(entry)}” was deleted.`, undo };
  }

  /** What was set aside of a shop, the latest first. */
  versions(id: string): Promise<readonly ShopVersion[]> {
    return this.#parts.store.versions(id);
  }

  /** Puts a version in the place of what is there, which is set aside in turn. Undo takes it back. */
  restore(id: string, version: ShopVersion): void {
    const restored = shelved({ id, document: version.document, written: version.aside });
    const name = shelvedName(restored);
    if (restored.kind === 'unreadable') {
      const { problems } = restored;
      this.#notice.value = { text: `This version of “${name}” can’t be opened.`, problems };
      return;
    }
    if (this.#find(id)?.kind === 'unreadable') {
      this.#kept.keep(id, restored.shop);
      this.#show(id, restored.shop);
      return;
    }
    this.openKept(id);
    this.#open.peek().session.edit(() => restored.shop);
    this.#notice.value = { text: `“${name}” is as it was. Undo brings back what was there.` };
  }

  /** A shop, kept or open. */
  shop(id: string): Shop | undefined {
    const open = this.#open.peek();
    if (open.id === id) return open.session.shop.peek();
    const entry = this.#find(id);
    return entry?.kind === 'shop' ? entry.shop : undefined;
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
    if (this.#notice.peek() === undefined) this.#standing.value = undefined;
    this.#notice.value = undefined;
  }

  /** Says something in the line above the page. */
  say(notice: Notice): void {
    this.#notice.value = notice;
  }

  /** Says something that opening another shop does not make void. */
  stand(notice: Notice): void {
    this.#notice.value = undefined;
    this.#standing.value = notice;
  }

  /** Kept when every edit so far is written. */
  idle(): Promise<void> {
    return this.#kept.idle();
  }

  /** Writes what a drag has left to be written: it has come to rest. */
  settle(): void {
    this.#kept.begin();
  }

  /** Begins to write everything before it returns: the page is about to go. */
  flush(): void {
    this.#open.peek().settle();
    this.#kept.flush();
  }

  /** Looks for what another tab may have written to the open shop while this one slept. */
  catchUp(): Promise<void> {
    return this.#kept.catchUp(this.#open.peek().id);
  }

  #find(id: string): Shelved | undefined {
    return this.#kept.find(id);
  }

  #show(id: string, shop: Shop): void {
    this.#open.value = this.#session(id, shop, this.units.peek());
    this.#notice.value = undefined;
  }

  #showLatest(): void {
    const latest = latestOf(this.shops.peek());
    if (latest === undefined) this.openDemo();
    else this.#show(latest.record.id, latest.shop);
  }

  /** Opens a shop whose every edit is kept from now on. */
  #session(id: string, shop: Shop, units: UnitSystem): OpenShop {
    this.#open?.peek().close();
    const { tabs, now } = this.#parts;
    return new OpenShop(id, shop, units, {
      ...(tabs && { tabs }),
      now,
      keep: (document, versions, haste) => this.#kept.keep(id, document, versions, haste),
      lead: (isSole) => this.#kept.lead(id, isSole),
      gained: () => void this.#kept.catchUp(id),
      unanswered: (takeOver) => this.say(unansweredNotice(takeOver)),
    });
  }

  async #handOver(id: string): Promise<void> {
    const open = this.#open.peek();
    if (id !== open.id) return;
    this.#kept.begin();
    await this.#kept.idle();
    if (!this.#kept.isWaiting(id)) open.handOver();
  }

  #onFollowed(entry: Shelved): void {
    const open = this.#open.peek();
    if (entry.kind === 'shop' && entry.record.id === open.id) open.adopt(entry.shop);
  }

  #freshName(wish: string): string {
    const taken = this.shops.peek().map(shelvedName);
    let name = wish;
    for (let number = 2; taken.includes(name); number++) name = `${wish} ${number}`;
    return name;
  }
}
