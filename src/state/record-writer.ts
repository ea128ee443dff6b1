// Writes records one after another. While one is being written, only the latest of each shop waits,
// so that a drag with a hundred edits never leaves a hundred writes behind.

import type { ShopRecord, ShopStore } from '../shop/store/shop-store.ts';

/** What is told when a write fails, and `undefined` when one succeeds. */
export type TellFailure = (reason: string | undefined) => void;

export class RecordWriter {
  readonly #store: ShopStore;
  readonly #tell: TellFailure;
  /** By id, what is to be written; undefined to take the record out. */
  readonly #waiting = new Map<string, ShopRecord | undefined>();
  #work: Promise<void> = Promise.resolve();
  #isBusy = false;

  /**
   * @param store - where to write
   * @param tell - is told how each write ended
   */
  constructor(store: ShopStore, tell: TellFailure) {
    this.#store = store;
    this.#tell = tell;
  }

  /** Writes a record, in the place of the one with its id. */
  write(record: ShopRecord): void {
    this.#waiting.set(record.id, record);
    this.#begin();
  }

  /** Takes a record out. */
  remove(id: string): void {
    this.#waiting.set(id, undefined);
    this.#begin();
  }

  /** Kept when everything asked for so far has been written or has failed. */
  idle(): Promise<void> {
    return this.#work;
  }

  #begin(): void {
    if (this.#isBusy) return;
    this.#isBusy = true;
    this.#work = this.#writeAll();
  }

  async #writeAll(): Promise<void> {
    for (let next = this.#take(); next !== undefined; next = this.#take()) {
      const [id, record] = next;
      try {
        // One after another: a later state must not be overtaken by an earlier one.
        await (record === undefined ? this.#store.remove(id) : this.#store.write(record));
        this.#tell(undefined);
      } catch (error) {
        this.#tell(error instanceof Error ? error.message : String(error));
      }
    }
    this.#isBusy = false;
  }

  #take(): readonly [string, ShopRecord | undefined] | undefined {
    const next = this.#waiting.entries().next();
    if (next.done === true) return undefined;
    this.#waiting.delete(next.value[0]);
    return next.value;
  }
}
