import { describe, expect, it } from 'vitest';
import { openShopDocument } from '../../../../src/shop/open-shop.ts';
import { renameShop } from '../../../../src/shop/edits/edit-shop.ts';
import { MemoryStore } from '../../../../src/shop/store/memory-store.ts';
import { familyOf } from '../../../../src/state/decisions/family.ts';
import { variantTaken } from '../../../../src/state/decisions/variants.ts';
import { Shelf } from '../../../../src/state/shelf.ts';
import { shelvedName } from '../../../../src/state/shelved.ts';
import { demoShop } from '../demo-shop.ts';

/** A shelf with nothing on it but the demo to open, whose clock runs on by itself. */
function shelfOn(store: MemoryStore, records: Awaited<ReturnType<MemoryStore['readAll']>> = []) {
  let [count, time] = [0, records.length * 1000];
  return new Shelf({
    store,
    records,
    demo: demoShop(),
    units: 'us',
    newId: () => `shop-${time}-${count++}`,
    now: () => ++time,
  });
}
const narrow = (shop: ReturnType<typeof demoShop>) => ({ ...shop, note: 'of narrow pipe' });
const family = (shelf: Shelf) => {
  const { id, session } = shelf.open.peek();
  return familyOf(shelf.shops.peek(), { id, shop: session.shop.peek() });
};

describe('variants of a shop', () => {
  it('are kept beside it, the shop too, and remember where they came from', () => {
    const shelf = shelfOn(new MemoryStore());
    const { id, session } = shelf.open.peek();
    const { name } = session.shop.peek();
    shelf.keepVariant(narrow(session.shop.peek()), 'main of 5 in.');
    expect(shelf.open.peek().id).toBe(id);
    expect(shelf.shops.peek().map(shelvedName).toSorted()).toEqual([
      name,
      `${name}: main of 5 in.`,
    ]);
    const [first, variant] = family(shelf);
    expect(first).toMatchObject({ id, isFirst: true, isOpen: true });
    expect(variant).toMatchObject({
      isFirst: false,
      shop: { note: 'of narrow pipe', variantOf: { shop: id, name, words: 'main of 5 in.' } },
    });
    expect(openShopDocument(variant!.shop).kind).toBe('opened');
  });

  it('get names of their own where the words are the same', () => {
    const shelf = shelfOn(new MemoryStore());
    const shop = shelf.open.peek().session.shop.peek();
    shelf.keepVariant(narrow(shop), 'wider');
    shelf.keepVariant(narrow(shop), 'wider');
    const names = family(shelf).map((each) => each.shop.name);
    expect(new Set(names).size).toBe(3);
  });

  it('do not open by themselves next time, unless one was worked on', async () => {
    const store = new MemoryStore();
    const shelf = shelfOn(store);
    const { id } = shelf.open.peek();
    shelf.open.peek().session.edit(renameShop('Mine'));
    shelf.keepVariant(narrow(shelf.open.peek().session.shop.peek()), 'wider');
    await shelf.idle();
    const again = shelfOn(store, await store.readAll());
    expect(again.open.peek().id).toBe(id);
    const variant = family(again).find(({ isFirst }) => !isFirst)!;
    again.openKept(variant.id);
    again.open.peek().session.edit((shop) => ({ ...shop, note: 'worked on' }));
    await again.idle();
    const third = shelfOn(store, await store.readAll());
    expect(third.open.peek().id).toBe(variant.id);
  });

  it('make a family with variants of variants, and with none that came from elsewhere', () => {
    const shelf = shelfOn(new MemoryStore());
    const { id, session } = shelf.open.peek();
    shelf.keepVariant(narrow(session.shop.peek()), 'one');
    shelf.openKept(family(shelf)[1]!.id);
    shelf.keepVariant(narrow(shelf.open.peek().session.shop.peek()), 'two');
    expect(family(shelf).map((each) => each.isFirst)).toEqual([true, false, false]);
    expect(family(shelf)[0]!.id).toBe(id);
    shelf.openDemo();
    expect(family(shelf)).toHaveLength(1);
  });

  it('are taken over under the name of the shop that they came from', () => {
    const shelf = shelfOn(new MemoryStore());
    const { session } = shelf.open.peek();
    const of = session.shop.peek();
    shelf.keepVariant({ ...of, carryingRange: { low: 16, high: 20 } }, 'slower');
    const taken = variantTaken(of, family(shelf)[1]!.shop);
    expect(taken).toEqual({ ...of, carryingRange: { low: 16, high: 20 } });
  });
});
