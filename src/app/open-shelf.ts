// Opens the shelf of shops as this browser kept it, or one that lasts while the page is open.

import demo from '../shop/heron-lane.json' with { type: 'json' };
import { openShopDocument } from '../shop/open-shop.ts';
import type { Shop } from '../shop/schema/shop-schema.ts';
import { BrowserStore } from '../shop/store/browser-store.ts';
import { BrowserTabs } from '../shop/store/browser-tabs.ts';
import { MemoryStore } from '../shop/store/memory-store.ts';
import { randomId } from '../shop/store/random-id.ts';
import { StoreFailure, storeFailure } from '../shop/store/store-failure.ts';
import { refusedNotice, reopenedNotice, unblockedNotice } from '../state/notice.ts';
import { Shelf } from '../state/shelf.ts';
import type { UnitSystem } from '../units/quantity.ts';

/** How long the shops may take to be read before the page goes on without them [ms]. */
const PATIENCE = 8000;

/** A shelf, and whether it outlasts the page. */
export interface OpenedShelf {
  readonly shelf: Shelf;
  readonly kept: boolean;
}

/**
 * Opens the shelf.
 *
 * @param units - the units to begin with
 * @returns the shelf; with a notice on it where the browser refuses to keep anything
 */
export async function openShelf(units: UnitSystem): Promise<OpenedShelf> {
  const outside = {
    demo: demoShop(),
    units,
    newId: randomId,
    now: () => Date.now(),
  };
  const lasting = (failure: StoreFailure, store: MemoryStore): OpenedShelf => {
    const shelf = new Shelf({ ...outside, store, records: [] });
    shelf.say(refusedNotice(failure, shelf.open.peek().id));
    return { shelf, kept: false };
  };
  const meanwhile = (later: Promise<BrowserStore>): OpenedShelf => {
    const memory = new MemoryStore();
    const opened = lasting(new StoreFailure('blocked', 'no answer'), memory);
    void bringOver(opened.shelf, memory, later);
    return opened;
  };
  try {
    const opened = await BrowserStore.open();
    if (opened.kind === 'blocked') return meanwhile(opened.later);
    const { store } = opened;
    const reading = store.readAll();
    const records = await Promise.race([reading, afterPatience()]);
    if (!records) return meanwhile(reading.then(() => store));
    const shelf = new Shelf({ ...outside, store, records, tabs: new BrowserTabs() });
    store.onReopened = () => shelf.say(reopenedNotice);
    void store.sweep().catch(() => {}); // there is another time
    return { shelf, kept: true };
  } catch (error) {
    return lasting(storeFailure(error), new MemoryStore());
  }
}

/** A database that opens but does not answer must not keep the page from being used. */
function afterPatience(): Promise<undefined> {
  return new Promise((resolve) => {
    setTimeout(() => resolve(undefined), PATIENCE);
  });
}

/** Once the database opens after all, what was entered meanwhile goes there, and what is entered then. */
async function bringOver(shelf: Shelf, memory: MemoryStore, later: Promise<BrowserStore>) {
  try {
    await memory.moveTo(await later);
  } catch {
    return; // it stays as it was said: nothing is kept
  }
  const show = async () => {
    await shelf.idle();
    location.reload();
  };
  shelf.stand(unblockedNotice(() => void show()));
}

/** Heron Lane, the demo. */
function demoShop(): Shop {
  const opened = openShopDocument(demo);
  if (opened.kind === 'opened') return opened.shop;
  throw new RangeError(`the demo is refused: ${JSON.stringify(opened.problems)}`);
}
