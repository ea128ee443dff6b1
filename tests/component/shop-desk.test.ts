// The desk with its shelf: from the open shop to the list, to the start of another, and back.
import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { MemoryStore } from '../../src/shop/store/memory-store.ts';
import type { ShopRecord } from '../../src/shop/store/shop-store.ts';
import { Shelf } from '../../src/state/shelf.ts';
import { shelvedName } from '../../src/state/shelved.ts';
import type { ShopDesk } from '../../src/ui/shop-desk/shop-desk.ts';
import '../../src/ui/shop-desk/shop-desk.ts';
import { ShelfEvent } from '../../src/ui/shop-list/shelf-event.ts';
import '../../src/ui/shop-list/shop-list.ts';
import '../../src/ui/start-shop/start-shop.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { button, drawn, expect, expectAccessible, html, placeWhole, text } from './harness.ts';

async function placeDesk(
  records: readonly ShopRecord[] = [],
): Promise<{ desk: ShopDesk; shelf: Shelf }> {
  let count = 0;
  const shelf = new Shelf({
    store: new MemoryStore(records),
    records,
    demo: demoShop(),
    units: 'us',
    newId: () => `new-${++count}`,
    now: () => 1e12 + ++count,
  });
  const desk = await placeWhole<ShopDesk>(html`<dc-shop-desk .shelf=${shelf} kept></dc-shop-desk>`);
  return { desk, shelf };
}
const two = (): readonly ShopRecord[] => [
  { id: 'a', document: { ...demoShop(), name: 'Shed' }, written: 1e12 },
  { id: 'b', document: { ...demoShop(), name: 'Barn' }, written: 2e12 },
];
const title = () => page.getByRole('heading', { level: 1 }).element().textContent;
const names = (shelf: Shelf) => shelf.shops.value.map(shelvedName);
const fileOf = (document: unknown, name = 'shop.json') =>
  new File([JSON.stringify(document)], name, { type: 'application/json' });

describe('the desk', () => {
  it('is accessible in each of its views', async () => {
    const { desk } = await placeDesk(two());
    await expectAccessible(desk);
    await button('Shops').click();
    await drawn();
    await expectAccessible(desk);
    await button('Start my own').click();
    await drawn();
    await expectAccessible(desk);
  });

  it('opens another shop from the list', async () => {
    await placeDesk(two());
    expect(title()).toBe('Barn');
    await button('Shops').click();
    await button('Open: Shed').click();
    await drawn();
    expect(title()).toBe('Shed');
  });

  it('starts a shop and lands on it with a live point; cancel goes back', async () => {
    const { shelf } = await placeDesk();
    await button('Start my own').click();
    await button(/^Cancel, back to/).click();
    await drawn();
    expect(title()).toBe('Heron Lane paddle works');
    await button('Start my own').click();
    await button('Open the shop').click();
    await drawn();
    expect(title()).toBe('My shop');
    expect(text(/^Table saw open: .*cfm at/).elements().length).toBeGreaterThanOrEqual(1);
    expect(names(shelf)).toEqual(['My shop']);
  });

  it('copies, renames and deletes, and takes the deletion back', async () => {
    const { shelf } = await placeDesk(two());
    await button('Shops').click();
    await button('Duplicate: Shed').click();
    await page.getByRole('textbox', { name: 'Name' }).first().fill('Yard');
    await userEvent.keyboard('{Enter}');
    expect(names(shelf)).toEqual(['Yard', 'Barn', 'Shed']);
    await button('Delete: Barn').click();
    expect(names(shelf)).toEqual(['Yard', 'Shed']);
    await button('Undo').click();
    expect(names(shelf)).toEqual(['Yard', 'Barn', 'Shed']);
    expect(text(/was deleted/).elements()).toHaveLength(0);
  });

  it('opens the demo afresh beside what is kept', async () => {
    const { shelf } = await placeDesk(two());
    await button('Shops').click();
    await button('Open the demo').click();
    await drawn();
    expect(title()).toBe('Heron Lane paddle works');
    expect(names(shelf)).toEqual(['Barn', 'Shed']);
  });

  it('shows a record that can’t be opened, with the reason, and offers its file', async () => {
    const broken = {
      id: 'x',
      document: { format: 'dropcurve-shop', version: 9, name: 'Odd' },
      written: 1,
    };
    await placeDesk([broken]);
    expect(text(/One kept shop could not be opened/).elements()).toHaveLength(1);
    await button('Shops').click();
    expect(text(/newer version of this program/).elements()).toHaveLength(1);
    expect(button('Save as a file: Odd').elements()).toHaveLength(1);
    expect(button('Open: Odd').elements()).toHaveLength(0);
  });

  it('opens a file that is chosen', async () => {
    const { shelf } = await placeDesk();
    await button('Shops').click();
    await page.getByLabelText('Open a file').upload(fileOf({ ...demoShop(), name: 'From a file' }));
    await expect.poll(title).toBe('From a file');
    expect(names(shelf)).toEqual(['From a file']);
  });

  it('says in plain words that a file is none of this page, or can’t be read at all', async () => {
    const { shelf } = await placeDesk(two());
    await button('Shops').click();
    const choose = page.getByLabelText('Open a file');
    await choose.upload(new File(['a photo'], 'photo.json', { type: 'application/json' }));
    await expect
      .poll(() => text(/It is not a file that this page saved/).elements().length)
      .toBe(1);
    await choose.upload(fileOf({ ...demoShop(), version: 9 }));
    await expect.poll(() => text(/It needs a newer version/).elements().length).toBe(1);
    const gone = new File(['{}'], 'gone.json');
    gone.text = () => Promise.reject(new DOMException('not found', 'NotFoundError'));
    const heading = page.getByRole('heading', { level: 1 }).element();
    heading.dispatchEvent(new ShelfEvent({ kind: 'file', file: gone }));
    await expect.poll(() => text(/“gone.json” can’t be read/).elements().length).toBe(1);
    expect(names(shelf)).toHaveLength(2);
  });

  it('lists what is wrong with a file dropped on the page, and leaves open what was open', async () => {
    const { desk, shelf } = await placeDesk(two());
    const transfer = new DataTransfer();
    transfer.items.add(fileOf({ ...demoShop(), sections: [] }, 'odd.json'));
    const drop = (type: string) =>
      desk.dispatchEvent(
        new DragEvent(type, { dataTransfer: transfer, bubbles: true, cancelable: true }),
      );
    expect(drop('dragover')).toBe(false);
    expect(desk.receiving).toBe(true);
    drop('drop');
    await expect.poll(() => text(/“odd.json” was not opened/).elements().length).toBe(1);
    expect(text(/must be a list of 1 to 5000 sections/).elements()).toHaveLength(1);
    expect(title()).toBe('Barn');
    await expectAccessible(desk);
    await button('Dismiss').click();
    expect(shelf.notice.value).toBeUndefined();
  });

  it('undoes nothing of the shop while the list is shown', async () => {
    const { shelf } = await placeDesk(two());
    await button('Shops').click();
    shelf.rename('b', 'Renamed');
    await userEvent.keyboard('{Control>}z{/Control}');
    expect(names(shelf)).toContain('Renamed');
  });
});
