// Shops kept as long as the page is open, for browsers that refuse to keep more, or do not yet.

import type { ShopRecord, ShopStore, ShopVersion, Writing, Written } from './shop-store.ts';
import { surplusVersions } from './versions-kept.ts';

/** Holds its records in memory, and from some moment on in another store too. */
export class MemoryStore implements ShopStore {
  readonly #records: Map<string, ShopRecord>;
  readonly #versions = new Map<string, readonly ShopVersion[]>();
  #lasting: ShopStore | undefined;

  /** @param records - what it holds from the start */
  constructor(records: readonly ShopRecord[] = []) {
    this.#records = new Map(records.map((record) => [record.id, record]));
  }

  /**
   * Writes everything to a store that has come late, and whatever is written or removed from now on.
   *
   * @param store - holds none of these records
   */
  async moveTo(store: ShopStore): Promise<void> {
    this.#lasting = store;
    const moved = [...this.#records.values()].map((record) =>
      store.write({ record, versions: this.#versions.get(record.id) ?? [] }),
    );
    await Promise.all(moved);
  }

  async readAll(): Promise<readonly ShopRecord[]> {
    return [...this.#records.values()];
  }

  async read(id: string): Promise<ShopRecord | undefined> {
    return this.#records.get(id);
  }

  async write(writing: Writing): Promise<Written> {
    const written = this.#put(writing);
    await this.#lasting?.write({ ...writing, isSure: true });
    return written;
  }

  writeAtOnce(writings: readonly Writing[]): void {
    for (const writing of writings) this.#put(writing);
    this.#lasting?.writeAtOnce(writings);
  }

  async remove(id: string): Promise<void> {
    this.#records.delete(id);
    await this.#lasting?.remove(id);
  }

  async versions(id: string): Promise<readonly ShopVersion[]> {
    return (this.#versions.get(id) ?? []).toSorted((a, b) => b.aside - a.aside);
  }

  #put({ record, versions }: Writing): Written {
    const found = this.#records.get(record.id);
    const { revision, over } = nextRevision(record, found);
    this.#records.set(record.id, { ...record, revision });
    this.#setAside(record.id, over ? [...versions, overwritten(over)] : versions);
    return over ? { revision, over } : { revision };
  }

  #setAside(id: string, versions: readonly ShopVersion[]): void {
    const all = [...(this.#versions.get(id) ?? []), ...versions];
    const surplus = surplusVersions(all);
    this.#versions.set(
      id,
      all.filter((version) => !surplus.includes(version)),
    );
  }
}

/**
 * The revision of what is written, and whether it takes the place of something it does not know.
 *
 * @param record - to be written, with the revision that it was made from
 * @param found - what lies in its place
 * @returns the revision, and what was found if it is not what the record was made from
 */
export function nextRevision(record: ShopRecord, found: ShopRecord | undefined): Written {
  const from = record.revision ?? 0;
  const there = found?.revision ?? 0;
  const revision = Math.max(from, there) + 1;
  return found !== undefined && there > from ? { revision, over: found } : { revision };
}

/**
 * What was overwritten, as a version.
 *
 * @param record - what lay there
 * @returns the version
 */
export function overwritten({ document, written }: ShopRecord): ShopVersion {
  return { aside: written, cause: 'other tab', document };
}
