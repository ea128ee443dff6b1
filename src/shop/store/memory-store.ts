// Shops kept as long as the page is open, for browsers that refuse to keep more.

import type { ShopRecord, ShopStore } from './shop-store.ts';

/** Holds its records in memory. */
export class MemoryStore implements ShopStore {
  readonly #records: Map<string, ShopRecord>;

  /** @param records - what it holds from the start */
  constructor(records: readonly ShopRecord[] = []) {
    this.#records = new Map(records.map((record) => [record.id, record]));
  }

  async readAll(): Promise<readonly ShopRecord[]> {
    return [...this.#records.values()];
  }

  async write(record: ShopRecord): Promise<void> {
    this.#records.set(record.id, record);
  }

  async remove(id: string): Promise<void> {
    this.#records.delete(id);
  }
}
