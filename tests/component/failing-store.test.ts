// Each call of the browser's own database is made to fail once, in each way in which it can. Nothing
// is lost, and the reader is told each time. The failures are the browser's own, but for the full
// storage, which is said by a call that throws as a full one does.
import { afterEach, beforeEach, describe, it, vi } from 'vitest';
import { renameShop } from '../../src/shop/edits/edit-shop.ts';
import { BrowserStore } from '../../src/shop/store/browser-store.ts';
import type { ShopRecord } from '../../src/shop/store/shop-store.ts';
import { StoreFailure } from '../../src/shop/store/store-failure.ts';
import { reopenedNotice } from '../../src/state/notice.ts';
import { Shelf } from '../../src/state/shelf.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { expect } from './harness.ts';

const NAME = 'dropcurve';
const kept: ShopRecord = { id: 'a', document: { ...demoShop(), name: 'Shed' }, written: 5 };
const other: ShopRecord = { id: 'b', document: { ...demoShop(), name: 'Barn' }, written: 1 };

/** Connections that a test leaves behind are closed, or the next would wait for them. */
const connections: IDBDatabase[] = [];
// oxlint-disable-next-line typescript/unbound-method -- called on what it belongs to
const realOpen = IDBFactory.prototype.open;
// oxlint-disable-next-line typescript/unbound-method -- called on what it belongs to
const realTransaction = IDBDatabase.prototype.transaction;

function destroy(): Promise<void> {
  localStorage.clear();
  for (const connection of connections.splice(0)) connection.close();
  return new Promise((resolve, reject) => {
    const request = indexedDB.deleteDatabase(NAME);
    request.addEventListener('success', () => resolve());
    request.addEventListener('error', () => reject(new Error('not deleted')));
  });
}

/** The database as the first version of the program left it. */
function openRaw(version: number, records: readonly ShopRecord[] = []): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = realOpen.call(indexedDB, NAME, version);
    request.addEventListener('upgradeneeded', () => {
      request.result.createObjectStore('shops', { keyPath: 'id' });
    });
    request.addEventListener('error', () => reject(new Error(request.error?.message)));
    request.addEventListener('success', () => {
      const change = realTransaction.call(request.result, 'shops', 'readwrite');
      for (const record of records) change.objectStore('shops').put(record);
      change.addEventListener('complete', () => resolve(request.result));
    });
  });
}

async function openStore(): Promise<BrowserStore> {
  const opened = await BrowserStore.open(300);
  if (opened.kind === 'blocked') throw new Error('blocked');
  return opened.store;
}

async function shelfOn(store: BrowserStore): Promise<Shelf> {
  let count = 0;
  const shelf = new Shelf({
    store,
    records: await store.readAll(),
    demo: demoShop(),
    units: 'us',
    newId: () => `new-${++count}`,
    now: () => Date.now(),
  });
  store.onReopened = () => shelf.say(reopenedNotice);
  return shelf;
}
const nameOf = (record: ShopRecord | undefined) => (record?.document as { name: string })?.name;

/** What fails the next call, once. */
type Break = () => void;
const WAYS: Readonly<Record<string, Break>> = {
  'full storage': () => {
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementationOnce(() => {
      throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
    });
  },
  'an abort': () => {
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementationOnce(function (
      this: IDBDatabase,
      ...args: Parameters<IDBDatabase['transaction']>
    ) {
      const change = realTransaction.apply(this, args);
      queueMicrotask(() => {
        // A write before the page goes is committed at once and past aborting.
        if (!isFlushing) change.abort();
      });
      return change;
    });
  },
  'a lost connection': () => {
    for (const connection of connections) connection.close();
  },
};

let isFlushing = false;

describe('a store that fails once', () => {
  beforeEach(async () => {
    isFlushing = false;
    vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(function (
      this: IDBFactory,
      ...args: Parameters<IDBFactory['open']>
    ) {
      const request = realOpen.apply(this, args);
      request.addEventListener('success', () => connections.push(request.result));
      return request;
    });
    await destroy();
    (await openRaw(1, [kept, other])).close();
  });
  afterEach(async () => {
    vi.restoreAllMocks();
    await destroy();
  });

  describe.each(Object.keys(WAYS))('by %s', (way) => {
    const breakNext = WAYS[way]!;
    const said = (shelf: Shelf) => shelf.notice.value?.text ?? '';

    it('while it writes: the edit is kept after all, and the reader told', async () => {
      const store = await openStore();
      const shelf = await shelfOn(store);
      breakNext();
      shelf.open.value.session.edit(renameShop('Edited'));
      await shelf.idle();
      expect(said(shelf)).toMatch(way.startsWith('a lost') ? /open again/ : /are not saved/);
      expect(shelf.open.value.session.shop.value.name).toBe('Edited');
      shelf.notice.value?.action?.act();
      await shelf.idle();
      expect(nameOf(await store.read('a'))).toBe('Edited');
      expect(said(shelf)).toMatch(/everything is kept/);
      expect((await store.versions('a')).map((each) => each.document)).toEqual([kept.document]);
    });

    it('while it takes a shop out: it is out after all, and nothing else is', async () => {
      const store = await openStore();
      const shelf = await shelfOn(store);
      breakNext();
      shelf.remove('b');
      await shelf.idle();
      expect(said(shelf)).toMatch(way.startsWith('a lost') ? /open again/ : /are not saved/);
      shelf.notice.value?.action?.act();
      await shelf.idle();
      expect((await store.readAll()).map(nameOf)).toEqual(['Shed']);
    });

    it('while it looks for what another tab wrote: what is open stays, and the reader is told', async () => {
      const store = await openStore();
      const shelf = await shelfOn(store);
      breakNext();
      await shelf.catchUp();
      expect(said(shelf)).toMatch(
        way.startsWith('a lost') ? /open again/ : /What other tabs have changed can’t be read/,
      );
      expect(shelf.open.value.session.shop.value.name).toBe('Shed');
    });

    it('while it looks for all shops or for versions: it says how it failed', async () => {
      const store = await openStore();
      for (const call of [() => store.readAll(), () => store.versions('a')]) {
        breakNext();
        const ended = await call().catch((error: unknown) => error);
        if (way.startsWith('a lost')) expect(ended).not.toBeInstanceOf(Error);
        else expect(ended).toBeInstanceOf(StoreFailure);
        expect((await store.readAll()).map(nameOf)).toEqual(['Shed', 'Barn']);
      }
    });

    it('while the page goes: nothing is thrown, and what waited still waits', async () => {
      const store = await openStore();
      const shelf = await shelfOn(store);
      const { session } = shelf.open.value;
      session.edit(renameShop('One'), 'drag');
      session.edit(renameShop('Two'), 'drag');
      isFlushing = true;
      breakNext();
      shelf.flush();
      vi.restoreAllMocks();
      shelf.settle();
      await shelf.idle();
      shelf.settle();
      await shelf.idle();
      expect(nameOf(await store.read('a'))).toBe('Two');
    });
  });

  it('waits for a tab that holds an older database, and opens when it lets go', async () => {
    const holder = await openRaw(1);
    const opened = await BrowserStore.open(300);
    expect(opened.kind).toBe('blocked');
    holder.close();
    if (opened.kind === 'open') return;
    const store = await opened.later;
    expect((await store.readAll()).map(nameOf)).toEqual(['Shed', 'Barn']);
  });

  it('lets go of the database for a newer version of the page, and says so at the next edit', async () => {
    const shelf = await shelfOn(await openStore());
    const newer = await new Promise<IDBDatabase>((resolve) => {
      const request = realOpen.call(indexedDB, NAME, 99);
      request.addEventListener('success', () => resolve(request.result));
    });
    shelf.open.value.session.edit(renameShop('Late'));
    await shelf.idle();
    expect(shelf.notice.value?.text).toMatch(/newer version of this page/);
    expect(shelf.notice.value?.save).toBe('a');
    newer.close();
  });

  it('drops the versions of shops that are gone', async () => {
    const store = await openStore();
    const shelf = await shelfOn(store);
    shelf.open.value.session.edit(renameShop('Edited'));
    shelf.remove('a');
    await shelf.idle();
    expect(await store.versions('a')).toHaveLength(1);
    await store.sweep();
    expect(await store.versions('a')).toHaveLength(0);
  });
});
