// The user's curves in this browser, in a database of their own beside that of the shops. A connection
// is opened for each call, which are few: nothing stays open that another tab would have to wait for.

import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { CurveRecord, CurveStore } from './curve-store.ts';
import { randomId } from './random-id.ts';

/** Name of the database, and of the channel on which its changes are told. */
const DATABASE = 'dropcurve-curves';
const VERSION = 1;

interface Schema extends DBSchema {
  curves: { key: string; value: CurveRecord };
}

/** Holds its records in the browser's own database. */
export class BrowserCurveStore implements CurveStore {
  /** Tells its own changes from those of others. */
  readonly #mark: string = randomId();

  readAll(): Promise<readonly CurveRecord[]> {
    return withDatabase((database) => database.getAll('curves'));
  }

  async write(record: CurveRecord): Promise<void> {
    await withDatabase(async (database) => {
      const change = database.transaction('curves', 'readwrite', { durability: 'strict' });
      await Promise.all([change.store.put(record), change.done]);
    });
    this.#tell();
  }

  async remove(id: string): Promise<void> {
    await withDatabase(async (database) => {
      const change = database.transaction('curves', 'readwrite', { durability: 'strict' });
      await Promise.all([change.store.delete(id), change.done]);
    });
    this.#tell();
  }

  listen(take: () => void): () => void {
    const channel = new BroadcastChannel(DATABASE);
    channel.addEventListener('message', ({ data }: MessageEvent<string>) => {
      if (data !== this.#mark) take();
    });
    return () => channel.close();
  }

  #tell(): void {
    const channel = new BroadcastChannel(DATABASE);
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a channel has no target
    channel.postMessage(this.#mark);
    channel.close();
  }
}

async function withDatabase<T>(action: (database: IDBPDatabase<Schema>) => Promise<T>): Promise<T> {
  const database = await openDB<Schema>(DATABASE, VERSION, {
    upgrade: (upgraded) => {
      upgraded.createObjectStore('curves', { keyPath: 'id' });
    },
  });
  try {
    return await action(database);
  } finally {
    database.close();
  }
}
