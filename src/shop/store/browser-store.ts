// Shops kept in this browser, in IndexedDB. Each write is one transaction that is on the disk when
// its promise is kept. A connection that the browser dropped in the background is opened anew, once.
// (Over 200 lines: every call of one interface, and each of them a transaction.)

import {
  type DBSchema,
  type IDBPDatabase,
  type IDBPObjectStore,
  type IDBPTransaction,
  openDB,
} from 'idb';
import { forgetLastWords, isLater, lastWords, leaveLastWords } from './last-words.ts';
import { nextRevision, overwritten } from './memory-store.ts';
import type { ShopRecord, ShopStore, ShopVersion, Writing, Written } from './shop-store.ts';
import { StoreFailure, storeFailure } from './store-failure.ts';
import { surplusVersions } from './versions-kept.ts';

const DATABASE = 'dropcurve';
/** 1: shops. 2: versions as well. */
const VERSION = 2;
/** How long a database may take to open before it counts as blocked [ms]. */
const PATIENCE = 8000;

/** After so many new versions, surplus ones are dropped. */
const SWEEP_EVERY = 8;

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
  /** Versions added since surplus ones were dropped. */
  #added = 0;
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

  async readAll(): Promise<readonly ShopRecord[]> {
    const words = lastWords();
    if (words.length > 0) await this.#takeUp(words);
    return this.#look('shops', (shops) => shops.getAll());
  }

  read(id: string): Promise<ShopRecord | undefined> {
    return this.#look('shops', (shops) => shops.get(id));
  }

  async write(writing: Writing): Promise<Written> {
    const written = await this.#retry(async (database) => {
      const change = begin(database);
      const put = writing.isSure ? putUnseen(change, writing) : putOver(change, writing);
      const [written] = await Promise.all([put, change.done]);
      return written;
    });
    this.#added += writing.versions.length;
    if (this.#added >= SWEEP_EVERY) await this.#dropSurplus(writing.record.id);
    return written;
  }

  writeAtOnce(writings: readonly Writing[]): void {
    leaveLastWords(writings);
    try {
      for (const writing of writings) {
        const change = begin(this.#database);
        // Whether it succeeds, nobody is left to be told.
        change.done.catch(() => {});
        putUnseen(change, writing).catch(() => {});
      }
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
    const surplus = surplusVersions(found);
    return found.filter((version) => !surplus.includes(version)).toReversed();
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

  /** Writes what the last page could not. Where another tab went on since, it becomes a version. */
  async #takeUp(words: readonly ShopRecord[]): Promise<void> {
    for (const word of words) {
      const kept = await this.read(word.id);
      if (kept === undefined || isLater(word, kept)) {
        const record = { ...word, revision: Math.max(word.revision ?? 0, kept?.revision ?? 0) };
        await this.write({ record, versions: [] });
      } else if (word.written > kept.written) {
        await this.write({ record: kept, versions: [overwritten(word)] });
      }
    }
    forgetLastWords();
  }

  /** Now and then: it is a transaction of its own, so that no write has to wait for it. */
  async #dropSurplus(id: string): Promise<void> {
    this.#added = 0;
    const change = begin(this.#database);
    const versions = change.objectStore('versions');
    const drop = async () => {
      const keys = await versions.getAllKeys(rangeOf(id));
      const marks = keys.map((key) => ({ aside: key[1], cause: key[2], key }));
      await Promise.all(surplusVersions(marks).map(({ key }) => versions.delete(key)));
    };
    await Promise.all([drop(), change.done]).catch(() => {}); // there is another time
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

/** Asks for everything at once and commits, so that it is done even if the page goes now. */
async function putUnseen(change: Change, { record, versions }: Writing): Promise<Written> {
  const revision = (record.revision ?? 0) + 1;
  const puts = [
    change.objectStore('shops').put({ ...record, revision }),
    ...addVersions(change, record.id, versions),
  ];
  change.commit();
  await Promise.all(puts);
  return { revision };
}

async function putOver(change: Change, { record, versions }: Writing): Promise<Written> {
  const shops = change.objectStore('shops');
  const { revision, over } = nextRevision(record, await shops.get(record.id));
  const all = over ? [...versions, overwritten(over)] : versions;
  await Promise.all([shops.put({ ...record, revision }), ...addVersions(change, record.id, all)]);
  return over ? { revision, over } : { revision };
}

function addVersions(change: Change, id: string, versions: readonly ShopVersion[]) {
  return versions.map((version) =>
    change.objectStore('versions').put(version, [id, version.aside, version.cause, Math.random()]),
  );
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
