// Writes records one after another. While one is being written, only the latest of each shop waits,
// so that a drag with a hundred edits never leaves a hundred writes behind. What could not be written
// is not forgotten: it waits for the next try.

import type { ShopRecord, ShopStore, ShopVersion, Written } from '../shop/store/shop-store.ts';
import { type StoreFailure, storeFailure } from '../shop/store/store-failure.ts';

/** What is told of each write. */
export interface WriterEars {
  /** A record was written, and what it took the place of unknowingly. */
  readonly written: (record: ShopRecord, over: ShopRecord | undefined) => void;
  readonly removed: (id: string) => void;
  readonly failed: (failure: StoreFailure) => void;
}

/** When to write: at once, or as one of many edits of a drag. */
export type Haste = 'now' | 'soon';

/** What waits to be written; without a record it is to be taken out. */
interface Waiting {
  readonly record: ShopRecord | undefined;
  readonly versions: readonly ShopVersion[];
}

/** A drag is written this often [ms]. */
const DRAG_PACE = 250;
/** How long it waits before the next try, at first and at most [ms]. */
const RETRY = { first: 2000, longest: 60_000 };

export class RecordWriter {
  readonly #store: ShopStore;
  readonly #ears: WriterEars;
  readonly #waiting = new Map<string, Waiting>();
  /** By id, the revision that the next write is made from. */
  readonly #revisions = new Map<string, number>();
  /** Shops that no other tab can have written since this one did. */
  readonly #sure = new Set<string>();
  /** Shops that this tab alone writes. */
  readonly #sole = new Set<string>();
  #current: readonly [string, Waiting] | undefined;
  #work: Promise<void> = Promise.resolve();
  #timer: ReturnType<typeof setTimeout> | undefined;
  #pause = RETRY.first;

  /**
   * @param store - where to write
   * @param ears - are told how each write ended
   */
  constructor(store: ShopStore, ears: WriterEars) {
    this.#store = store;
    this.#ears = ears;
  }

  /** Says which revision of a shop is known, so that the next write is made from it. */
  know({ id, revision = 0 }: ShopRecord): void {
    this.#revisions.set(id, revision);
  }

  /** Says whether this tab alone writes a shop. What lies there is looked at once more at first. */
  lead(id: string, isSole: boolean): void {
    if (isSole) this.#sole.add(id);
    else this.#sole.delete(id);
    this.#sure.delete(id);
  }

  /** The revision of a shop that is known. */
  revision(id: string): number {
    return this.#revisions.get(id) ?? 0;
  }

  /** Writes a record, in the place of the one with its id, and sets versions aside. */
  write(record: ShopRecord, versions: readonly ShopVersion[] = [], haste: Haste = 'now'): void {
    const before = this.#waiting.get(record.id)?.versions ?? [];
    this.#waiting.set(record.id, { record, versions: [...before, ...versions] });
    if (haste === 'now') this.begin();
    else this.#beginAfter(DRAG_PACE);
  }

  /** Takes a record out. */
  remove(id: string): void {
    this.#waiting.set(id, { record: undefined, versions: [] });
    this.begin();
  }

  /** Whether anything of a shop is not written yet. */
  isWaiting(id: string): boolean {
    return this.#waiting.has(id) || this.#current?.[0] === id;
  }

  /** Begins to write what waits, at once. */
  begin(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    if (!this.#current && this.#waiting.size > 0) this.#work = this.#writeAll();
  }

  /** Begins to write everything before it returns: the page is about to go. */
  flush(): void {
    const unwritten = new Map(this.#waiting);
    if (this.#current && !unwritten.has(this.#current[0])) unwritten.set(...this.#current);
    const writings = [...unwritten.values()].flatMap(({ record, versions }) =>
      record ? [{ record: this.#based(record), versions }] : [],
    );
    if (writings.length === 0) return;
    this.#store.writeAtOnce(writings);
    // Should the page live on, it finds its own writing there.
    for (const { record } of writings)
      this.know({ ...record, revision: (record.revision ?? 0) + 1 });
  }

  /** Kept when everything asked for so far has been written or has failed. */
  idle(): Promise<void> {
    return this.#work;
  }

  async #writeAll(): Promise<void> {
    for (let next = this.#take(); next !== undefined; next = this.#take()) {
      this.#current = next;
      const failure = await this.#do(next);
      this.#current = undefined;
      if (failure) {
        this.#putBack(next);
        this.#ears.failed(failure);
        this.#beginAfter(this.#pause);
        this.#pause = Math.min(2 * this.#pause, RETRY.longest);
        return;
      }
      this.#pause = RETRY.first;
    }
  }

  async #do([id, { record, versions }]: readonly [string, Waiting]) {
    try {
      // One after another: a later state must not be overtaken by an earlier one.
      if (record === undefined) {
        await this.#store.remove(id);
        this.#ears.removed(id);
      } else {
        const isSure = this.#sure.has(id);
        const writing = { record: this.#based(record), versions, isSure };
        this.#onWritten(record, await this.#store.write(writing));
      }
      return undefined;
    } catch (error) {
      return storeFailure(error);
    }
  }

  #onWritten(record: ShopRecord, { revision, over }: Written): void {
    const written = { ...record, revision };
    this.know(written);
    if (this.#sole.has(record.id)) this.#sure.add(record.id);
    this.#ears.written(written, over);
  }

  #based(record: ShopRecord): ShopRecord {
    return { ...record, revision: this.revision(record.id) };
  }

  #take(): readonly [string, Waiting] | undefined {
    const next = this.#waiting.entries().next();
    if (next.done === true) return undefined;
    this.#waiting.delete(next.value[0]);
    return next.value;
  }

  /** What was asked for later stands; what was to be set aside is not forgotten. */
  #putBack([id, failed]: readonly [string, Waiting]): void {
    const later = this.#waiting.get(id);
    this.#waiting.set(
      id,
      later ? { ...later, versions: [...failed.versions, ...later.versions] } : failed,
    );
  }

  #beginAfter(pause: number): void {
    this.#timer ??= setTimeout(() => this.begin(), pause);
  }
}
