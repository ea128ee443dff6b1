// Shops kept in this browser, in IndexedDB. Each write is one transaction that is on the disk when
// its promise is kept. A connection that the browser dropped in the background is opened anew, once.

import {
  type DBSchema,
  type IDBPDatabase,
  type IDBPObjectStore,
  type IDBPTransaction,
  openDB,
} from 'idb';
import { nextRevision, overwritten } from './memory-store.ts';
import type { ShopRecord, ShopStore, ShopVersion, Writing, Written } from './shop-store.ts';
import { StoreFailure, storeFailure } from './store-failure.ts';
import { surplusVersions } from './versions-kept.ts';

const DATABASE = 'dropcurve';
/** 1: shops. 2: versions as well. */
const VERSION = 2;
/** How long a database may take to open before it counts as blocked [ms]. */
const PATIENCE = 5000;

/** Shop, when it was set aside, why, and a number that no two share. */
type VersionKey = [string, number, ShopVersion['cause'], number];

interface Schema extends DBSchema {
  shops: { key: string; value: ShopRecord };
  versions: { key: VersionKey; value: ShopVersion };
}
type Database = IDBPDatabase<Schema>;
type Change = IDBPTransaction<Schema, ('shops' | 'versions')[], 'readwrite'>;

/** What became of opening: the store, or that it has to be waited for. */
export type OpenedStore =
  | { readonly kind: 'open'; readonly store: BrowserStore }
  | { readonly kind: 'blocked'; readonly later: Promise<BrowserStore> };

/** Holds its records in the browser's own database. */
export class BrowserStore implements ShopStore {
  #database: Database;
  /** Is told that a connection was lost and is open again. */
  onReopened: () => void = () => {};

  private constructor(database: Database) {
    this.#database = database;
  }

  /**
   * Opens the store.
   *
   * @param patience - how long it may take before it counts as blocked [ms]
   * @returns the store, or that another tab is in the way; fails where the browser keeps nothing
   */
  static async open(patience = PATIENCE): Promise<OpenedStore> {
    const opened = await connectWithin(patience);
    if (opened.database) return { kind: 'open', store: new BrowserStore(opened.database) };
    const later = opened.later.then((database) => new BrowserStore(database));
    return { kind: 'blocked', later };
  }

  readAll(): Promise<readonly ShopRecord[]> {
    return this.#look('shops', (shops) => shops.getAll());
  }

  read(id: string): Promise<ShopRecord | undefined> {
    return this.#look('shops', (shops) => shops.get(id));
  }

  write(writing: Writing): Promise<Written> {
    return this.#retry(async (database) => {
      const change = begin(database);
      const [written] = await Promise.all([put(change, writing), change.done]);
      return written;
    });
  }

  writeAtOnce(writings: readonly Writing[]): void {
    try {
      const change = begin(this.#database);
      // Whether it succeeds, nobody is left to be told.
      change.done.catch(() => {});
      for (const { record, versions } of writings) {
        const revision = (record.revision ?? 0) + 1;
        change
          .objectStore('shops')
          .put({ ...record, revision })
          .catch(() => {});
        void Promise.all(addVersions(change, record.id, versions));
      }
      change.commit();
    } catch {
      // The connection is gone: what waits stays waiting, in case the page lives on.
    }
  }

  remove(id: string): Promise<void> {
    return this.#retry(async (database) => {
      const change = begin(database);
      await Promise.all([change.objectStore('shops').delete(id), change.done]);
    });
  }

  async versions(id: string): Promise<readonly ShopVersion[]> {
    const found = await this.#look('versions', (versions) => versions.getAll(rangeOf(id)));
    return found.toReversed();
  }

  /** Drops the versions of shops that are kept no longer. */
  async sweep(): Promise<void> {
    await this.#retry(async (database) => {
      const change = begin(database);
      const ids = new Set(await change.objectStore('shops').getAllKeys());
      const versions = change.objectStore('versions');
      const orphans = (await versions.getAllKeys()).filter(([shop]) => !ids.has(shop));
      await Promise.all([...orphans.map((key) => versions.delete(key)), change.done]);
    });
  }

  /** Reads, and waits for the end of the transaction too, so that its failure is heard. */
  #look<K extends 'shops' | 'versions', T>(
    name: K,
    read: (store: IDBPObjectStore<Schema, [K], K>) => Promise<T>,
  ): Promise<T> {
    return this.#retry(async (database) => {
      const look = database.transaction(name);
      const [found] = await Promise.all([read(look.store), look.done]);
      return found;
    });
  }

  async #retry<T>(action: (database: Database) => Promise<T>): Promise<T> {
    try {
      return await action(this.#database);
    } catch (error) {
      if (storeFailure(error).trouble !== 'lost') throw storeFailure(error);
    }
    try {
      const { database } = await connectWithin(PATIENCE);
      if (!database) throw new StoreFailure('blocked', 'no answer');
      this.#database = database;
      const result = await action(this.#database);
      this.onReopened();
      return result;
    } catch (error) {
      const { trouble, message } = storeFailure(error);
      throw new StoreFailure(trouble === 'refused' ? 'lost' : trouble, message);
    }
  }
}

function begin(database: Database): Change {
  return database.transaction(['shops', 'versions'], 'readwrite', { durability: 'strict' });
}

async function put(change: Change, { record, versions }: Writing): Promise<Written> {
  const shops = change.objectStore('shops');
  const { revision, over } = nextRevision(record, await shops.get(record.id));
  const added = addVersions(change, record.id, over ? [...versions, overwritten(over)] : versions);
  await Promise.all([shops.put({ ...record, revision }), ...added]);
  if (added.length > 0) await dropSurplus(change, record.id);
  return over ? { revision, over } : { revision };
}

function addVersions(change: Change, id: string, versions: readonly ShopVersion[]) {
  return versions.map((version) =>
    change
      .objectStore('versions')
      .put(version, [id, version.aside, version.cause, Math.random()])
      .catch(() => {}),
  );
}

async function dropSurplus(change: Change, id: string): Promise<void> {
  const versions = change.objectStore('versions');
  const keys = await versions.getAllKeys(rangeOf(id));
  const marks = keys.map((key) => ({ aside: key[1], cause: key[2], key }));
  await Promise.all(surplusVersions(marks).map(({ key }) => versions.delete(key)));
}

function rangeOf(id: string): IDBKeyRange {
  return IDBKeyRange.bound([id], [id, []]);
}

/** The database, or the promise of one where it takes too long or another tab is in the way. */
async function connectWithin(patience: number) {
  let block = () => {};
  const blocked = new Promise<undefined>((resolve) => {
    block = () => resolve(undefined);
    setTimeout(block, patience);
  });
  const later = connect(block);
  const database = await Promise.race([later, blocked]);
  return { database, later };
}

async function connect(blocked: () => void): Promise<Database> {
  try {
    return await openDB<Schema>(DATABASE, VERSION, {
      upgrade: (database, from) => {
        if (from < 1) database.createObjectStore('shops', { keyPath: 'id' });
        if (from < 2) database.createObjectStore('versions');
      },
      blocked,
      blocking: (_current, _blocked, event) => (event.target as IDBDatabase).close(),
    });
  } catch (error) {
    const { trouble, message } = storeFailure(error);
    // While opening, only a newer database is more than a refusal.
    throw new StoreFailure(trouble === 'newer' ? trouble : 'refused', message);
  }
}
