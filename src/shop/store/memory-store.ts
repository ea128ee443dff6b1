// Shops kept as long as the page is open, for browsers that refuse to keep more.

import type { ShopRecord, ShopStore, ShopVersion, Writing, Written } from './shop-store.ts';
import { surplusVersions } from './versions-kept.ts';

/** Holds its records in memory. */
export class MemoryStore implements ShopStore {
  readonly #records: Map<string, ShopRecord>;
  readonly #versions = new Map<string, readonly ShopVersion[]>();

  /** @param records - what it holds from the start */
  constructor(records: readonly ShopRecord[] = []) {
    this.#records = new Map(records.map((record) => [record.id, record]));
  }

  async readAll(): Promise<readonly ShopRecord[]> {
    return [...this.#records.values()];
  }

  async read(id: string): Promise<ShopRecord | undefined> {
    return this.#records.get(id);
  }

  async write({ record, versions }: Writing): Promise<Written> {
    const found = this.#records.get(record.id);
    const { revision, over } = nextRevision(record, found);
    this.#records.set(record.id, { ...record, revision });
    this.#setAside(record.id, over ? [...versions, overwritten(over)] : versions);
    return over ? { revision, over } : { revision };
  }

  writeAtOnce(writings: readonly Writing[]): void {
    for (const writing of writings) void this.write(writing);
  }

  async remove(id: string): Promise<void> {
    this.#records.delete(id);
  }

  async versions(id: string): Promise<readonly ShopVersion[]> {
    return (this.#versions.get(id) ?? []).toSorted((a, b) => b.aside - a.aside);
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
