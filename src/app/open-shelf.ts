// Opens the shelf of shops as this browser kept it, or one that lasts while the page is open.

import demo from '../shop/heron-lane.json' with { type: 'json' };
import { openShopDocument } from '../shop/open-shop.ts';
import type { Shop } from '../shop/schema/shop-schema.ts';
import { BrowserStore } from '../shop/store/browser-store.ts';
import { MemoryStore } from '../shop/store/memory-store.ts';
import { refusedNotice } from '../state/notice.ts';
import { Shelf } from '../state/shelf.ts';
import type { UnitSystem } from '../units/quantity.ts';

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
    newId: () => crypto.randomUUID(),
    now: () => Date.now(),
  };
  try {
    const store = await BrowserStore.open();
    const records = await store.readAll();
    return { shelf: new Shelf({ ...outside, store, records }), kept: true };
  } catch (error) {
    const notice = refusedNotice(error instanceof Error ? error.message : String(error));
    const store = new MemoryStore();
    return { shelf: new Shelf({ ...outside, store, records: [], notice }), kept: false };
  }
}

/** Heron Lane, the demo. */
function demoShop(): Shop {
  const opened = openShopDocument(demo);
  if (opened.kind === 'opened') return opened.shop;
  throw new RangeError(`the demo is refused: ${JSON.stringify(opened.problems)}`);
}
