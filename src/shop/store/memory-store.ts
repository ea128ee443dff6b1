// Shops kept as long as the page is open, for browsers that refuse to keep more, or do not yet.

import type { ShopRecord, ShopStore, ShopVersion, Writing, Written } from './shop-store.ts';
import { surplusVersions } from './versions-kept.ts';

/** Holds its records in memory, until another store has come for them. */
export class MemoryStore implements ShopStore {
  readonly #records: Map<string, ShopRecord>;
  readonly #versions = new Map<string, readonly ShopVersion[]>();
  /** Where everything goes from the moment that it is known. */
  #lasting: ShopStore | undefined;
  #moving: Promise<void> = Promise.resolve();

  /** @param records - what it holds from the start */
  constructor(records: readonly ShopRecord[] = []) {
    this.#records = new Map(records.map((record) => [record.id, record]));
  }

  /**
   * Hands everything to a store that has come late, which is asked and written to from now on. Records
   * keep their revisions, so that whoever writes here can go on.
   *
   * @param store - holds none of these records
   * @throws StoreFailure where it does not take them; then they stay here
   */
  async moveTo(store: ShopStore): Promise<void> {
    const moved = Promise.all(
      [...this.#records.values()].map(async (record) =>
        store.write({
          record: { ...record, revision: (record.revision ?? 0) - 1 },
          versions: await this.versions(record.id),
        }),
      ),
    );
    this.#lasting = store;
    this.#moving = moved.then(
      () => {},
      () => {
        this.#lasting = undefined;
      },
    );
    await moved;
  }

  async readAll(): Promise<readonly ShopRecord[]> {
    const lasting = await this.#reached();
    return lasting ? lasting.readAll() : [...this.#records.values()];
  }

  async read(id: string): Promise<ShopRecord | undefined> {
    const lasting = await this.#reached();
    return lasting ? lasting.read(id) : this.#records.get(id);
  }

  async write(writing: Writing): Promise<Written> {
    if (!this.#lasting) return this.#put(writing);
    const lasting = await this.#reached();
    // Other tabs know that store too, so whoever writes here can't be sure.
    return lasting ? lasting.write({ ...writing, isSure: false }) : this.#put(writing);
  }

  writeAtOnce(writings: readonly Writing[]): void {
    for (const writing of writings) this.#put(writing);
    this.#lasting?.writeAtOnce(writings);
  }

  async remove(id: string): Promise<void> {
    this.#records.delete(id);
    const lasting = await this.#reached();
    await lasting?.remove(id);
  }

  async versions(id: string): Promise<readonly ShopVersion[]> {
    const lasting = await this.#reached();
    if (lasting) return lasting.versions(id);
    return (this.#versions.get(id) ?? []).toSorted((a, b) => b.aside - a.aside);
  }

  /** The other store, once it has everything. */
  async #reached(): Promise<ShopStore | undefined> {
    await this.#moving;
    return this.#lasting;
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
