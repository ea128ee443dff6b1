import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { exampleCurves } from '../../src/shop/example-curves.ts';
import { MemoryCurveStore } from '../../src/shop/store/memory-curve-store.ts';
import { CurveShelf } from '../../src/state/curve-shelf.ts';
import '../../src/ui/curve-shelf/curve-shelf.ts';
import { button, drawn, expect, expectAccessible, heard, html, place, text } from './harness.ts';

const [curve] = exampleCurves();
async function placeShelf() {
  let count = 0;
  const shelf = new CurveShelf({
    store: new MemoryCurveStore(),
    newId: () => `new ${++count}`,
    now: () => count,
  });
  const element = await place(
    html`<dc-curve-shelf .shelf=${shelf} .curve=${{ ...curve!, name: 'Ours' }}></dc-curve-shelf>`,
  );
  await drawn();
  return { shelf, element };
}

describe('the shelf of curves', () => {
  it('is accessible, empty and with a curve on it', async () => {
    const { element } = await placeShelf();
    await expectAccessible(element);
    await button('Keep “Ours” on the shelf').click();
    await drawn();
    await expectAccessible(element);
  });

  it('keeps the collector’s curve, hands any over, and takes one off and back', async () => {
    const { shelf, element } = await placeShelf();
    const taken = heard(element, 'dc-take-curve');
    await button('Keep “Ours” on the shelf').click();
    await drawn();
    expect(shelf.curves.value[0]!.curve.id).toBeUndefined();
    await button('Use Ours').click();
    await button(`Use ${curve!.name}`).click();
    expect(taken.map((event) => event.curve.name)).toEqual(['Ours', curve!.name]);
    await button('Delete Ours').click();
    await drawn();
    expect(text('None yet.').elements()).toHaveLength(1);
    await button('Undo').click();
    await drawn();
    expect(button('Use Ours').elements()).toHaveLength(1);
  });

  it('notes what a collector costs, in a currency, and forgets it again', async () => {
    const { shelf } = await placeShelf();
    const kept = () => shelf.curves.value[0]!.curve;
    const price = page.getByLabelText('Price of the collector');
    const currency = page.getByLabelText('Currency of the price');
    await button('Keep “Ours” on the shelf').click();
    await page.getByText('Name, note, source and price').click();
    // The example's own price, marked as invented there, goes first.
    await price.fill('');
    await userEvent.tab();
    await expect.poll(() => currency.query()).toBeNull();
    expect(kept().price).toBeUndefined();
    await price.fill('1450');
    await userEvent.tab();
    await expect.poll(() => kept().price).toEqual({ amount: 1450, currency: 'USD' });
    await currency.selectOptions('EUR');
    await expect.poll(() => kept().price).toEqual({ amount: 1450, currency: 'EUR' });
    await price.fill('cheap');
    await userEvent.tab();
    await drawn();
    expect(kept().price).toEqual({ amount: 1450, currency: 'EUR' });
    await price.fill('');
    await userEvent.tab();
    await expect.poll(() => kept().price).toBeUndefined();
    expect(kept().points).toEqual(curve!.points);
  });

  it('takes in a file and says why another was refused', async () => {
    const { shelf } = await placeShelf();
    const files = [
      new File([JSON.stringify(curve)], 'good.json'),
      new File(['flow,pressure\n1,2'], 'bad.csv'),
    ];
    await page.getByLabelText(/^Take in files/).upload(files);
    await expect.poll(() => shelf.curves.value.length).toBe(1);
    await expect.poll(() => text(/lacks the column/).elements().length).toBe(1);
  });
});
