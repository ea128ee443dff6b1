import { describe, expect, it } from 'vitest';
import { setCurrency, setPrice, setStockLength } from '../../../../src/shop/edits/edit-purchase.ts';
import { tryEdit } from '../../../../src/shop/edits/try-edit.ts';
import type { Shop } from '../../../../src/shop/schema/shop-schema.ts';
import { smallShop } from '../small-shop.ts';

type Edit = (shop: Shop) => Shop;
const after = (...edits: Edit[]) => edits.reduce((shop, edit) => edit(shop), smallShop);

describe('what was entered for buying', () => {
  it('keeps lengths of stock, prices and currency', () => {
    const shop = after(
      setStockLength('galvanised-spiral', 3),
      setPrice('gate-100mm', 18.5),
      setCurrency('EUR'),
      setStockLength('galvanised-spiral', 6),
      setPrice('bend-90-1.5-own-0.09mm-150mm', 0),
    );
    expect(shop.purchase).toEqual({
      stockLengths: [{ family: 'galvanised-spiral', length: 6 }],
      prices: [
        { item: 'gate-100mm', price: 18.5 },
        { item: 'bend-90-1.5-own-0.09mm-150mm', price: 0 },
      ],
      currency: 'EUR',
    });
    expect(tryEdit(shop, setPrice('gate-125mm', 20)).kind).toBe('edited');
  });

  it('takes out what is emptied, and with the last of it the whole', () => {
    const priced = after(setPrice('a', 1), setPrice('b', 2), setPrice('a', undefined));
    expect(priced.purchase).toEqual({ prices: [{ item: 'b', price: 2 }] });
    expect(setPrice('b', undefined)(priced)).toEqual(smallShop);
    expect('purchase' in setPrice('b', undefined)(priced)).toBe(false);
    expect(after(setStockLength('own-0.09mm', 3), setStockLength('own-0.09mm', undefined))).toEqual(
      smallShop,
    );
  });

  it('gives back the very same document if nothing changes', () => {
    const shop = after(setPrice('a', 1), setCurrency('EUR'), setStockLength('own-0.09mm', 3));
    const same = [setPrice('a', 1), setCurrency('EUR'), setStockLength('own-0.09mm', 3)];
    expect(same.map((edit) => edit(shop) === shop)).toEqual([true, true, true]);
    const none = [setPrice('a', undefined), setCurrency(undefined)];
    expect(none.map((edit) => edit(smallShop) === smallShop)).toEqual([true, true]);
  });

  it('refuses a price below nothing, with the place', () => {
    const tried = tryEdit(smallShop, setPrice('gate-100mm', -1));
    expect(tried).toMatchObject({
      kind: 'refused',
      problems: [{ place: 'purchase.prices[0].price', message: expect.stringContaining('is -1') }],
    });
  });
});
