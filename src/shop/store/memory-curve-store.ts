// Curves kept as long as the page is open, for browsers that refuse to keep more.

import type { CurveRecord, CurveStore } from './curve-store.ts';

/** Holds its records in memory. */
export class MemoryCurveStore implements CurveStore {
  readonly #records: Map<string, CurveRecord>;
  readonly #listeners = new Set<() => void>();

  /** @param records - what it holds from the start */
  constructor(records: readonly CurveRecord[] = []) {
    this.#records = new Map(records.map((record) => [record.id, record]));
  }

  async readAll(): Promise<readonly CurveRecord[]> {
    return [...this.#records.values()];
  }

  async write(record: CurveRecord): Promise<void> {
    this.#records.set(record.id, record);
    this.#tell();
  }

  async remove(id: string): Promise<void> {
    this.#records.delete(id);
    this.#tell();
  }

  listen(take: () => void): () => void {
    this.#listeners.add(take);
    return () => this.#listeners.delete(take);
  }

  #tell(): void {
    for (const take of this.#listeners) take();
  }
}
