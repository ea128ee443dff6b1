// Shops kept in this browser, in IndexedDB. Each write is one transaction that is on the disk when
// its promise is kept. A connection that the browser dropped in the background is opened anew.

import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { ShopRecord, ShopStore } from './shop-store.ts';

const DATABASE = 'dropcurve';
const VERSION = 1;

interface Schema extends DBSchema {
  shops: { key: string; value: ShopRecord };
}

/** Holds its records in the browser's own database. */
export class BrowserStore implements ShopStore {
  #database: IDBPDatabase<Schema>;

  private constructor(database: IDBPDatabase<Schema>) {
    this.#database = database;
  }

  /**
   * Opens the store.
   *
   * @returns the store; the promise fails where the browser refuses to keep anything
   */
  static async open(): Promise<BrowserStore> {
    return new BrowserStore(await connect());
  }

  readAll(): Promise<readonly ShopRecord[]> {
    return this.#retry((database) => database.getAll('shops'));
  }

  async write(record: ShopRecord): Promise<void> {
    await this.#retry(async (database) => {
      const change = database.transaction('shops', 'readwrite', { durability: 'strict' });
      await Promise.all([change.store.put(record), change.done]);
    });
  }

  async remove(id: string): Promise<void> {
    await this.#retry(async (database) => {
      const change = database.transaction('shops', 'readwrite', { durability: 'strict' });
      await Promise.all([change.store.delete(id), change.done]);
    });
  }

  async #retry<T>(action: (database: IDBPDatabase<Schema>) => Promise<T>): Promise<T> {
    try {
      return await action(this.#database);
    } catch (error) {
      const isClosed = error instanceof DOMException && error.name === 'InvalidStateError';
      if (!isClosed) throw error;
      this.#database = await connect();
      return action(this.#database);
    }
  }
}

function connect(): Promise<IDBPDatabase<Schema>> {
  return openDB<Schema>(DATABASE, VERSION, {
    upgrade: (database) => {
      database.createObjectStore('shops', { keyPath: 'id' });
    },
    blocking: (_current, _blocked, event) => (event.target as IDBDatabase).close(),
  });
}
