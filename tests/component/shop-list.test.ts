import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { shelved } from '../../src/state/shelved.ts';
import type { ShopList } from '../../src/ui/shop-list/shop-list.ts';
import '../../src/ui/shop-list/shop-list.ts';
import { smallShop } from '../unit/shop/small-shop.ts';
import { button, expect, expectAccessible, heard, html, place, text } from './harness.ts';

const WRITTEN = Date.UTC(2026, 10, 20);
const SHOPS = [
  { id: 'a', written: WRITTEN, document: { ...smallShop, name: 'Shed' } },
  { id: 'b', written: WRITTEN, document: { ...smallShop, name: 'Garage' } },
  { id: 'c', written: WRITTEN, document: { ...smallShop, name: 'Broken', sections: 'none' } },
].map(shelved);

const placeList = (shops = SHOPS, kept = true) =>
  place<ShopList>(
    html`<dc-shop-list .shops=${shops} .open=${'a'} .openName=${'Shed'} .kept=${kept}></dc-shop-list>`,
  );

describe('the list of shops', () => {
  it('is accessible, with shops, with none, and with one that can’t be opened', async () => {
    await expectAccessible(await placeList());
    await expectAccessible(await placeList([]));
  });

  it('begins at its heading, and says where shops are kept', async () => {
    await placeList();
    expect(document.activeElement?.shadowRoot?.activeElement?.textContent).toBe('Shops');
    expect(text(/They are kept in this browser/).elements()).toHaveLength(1);
    await placeList(SHOPS, false);
    expect(text(/This browser keeps nothing/).elements()).toHaveLength(1);
  });

  it('tells each shop’s drops and collector, and which is open', async () => {
    await placeList();
    const items = page.getByRole('listitem').elements();
    expect(items.map((item) => item.getAttribute('aria-current'))).toEqual([
      'true',
      'false',
      'false',
    ]);
    expect(items[0]?.textContent).toMatch(/Open now ·\s+2 drops/);
    expect(items[1]?.textContent).not.toContain('Open now');
  });

  it('leaves one that it can’t open as it is: with what is wrong, to be saved or deleted', async () => {
    await placeList();
    const broken = page.getByRole('listitem').elements()[2]!;
    expect(broken.textContent).toContain('Can’t be opened');
    expect(broken.textContent).toMatch(/sections .*must be a list/);
    expect(button('Open: Broken').elements()).toHaveLength(0);
    expect(button('Save as a file: Broken').elements()).toHaveLength(1);
  });

  it('asks for what is pressed, of the shop that it stands at', async () => {
    const list = await placeList();
    const wishes = heard(list, 'dc-shelf');
    await button('Open: Garage').click();
    await button('Duplicate: Garage').click();
    await button('Delete: Shed').click();
    await button('Open: Shed').click();
    await button('Back to Shed').click();
    expect(wishes.map(({ wish }) => wish)).toEqual([
      { kind: 'open', id: 'b' },
      { kind: 'duplicate', id: 'b' },
      { kind: 'remove', id: 'a' },
      { kind: 'back' },
      { kind: 'back' },
    ]);
  });

  it('renames a shop where its name stands', async () => {
    const list = await placeList();
    const wishes = heard(list, 'dc-shelf');
    await page.getByRole('textbox', { name: 'Name' }).nth(1).fill('Old garage');
    await userEvent.tab();
    expect(wishes.map(({ wish }) => wish)).toEqual([
      { kind: 'rename', id: 'b', name: 'Old garage' },
    ]);
  });
});
