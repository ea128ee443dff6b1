import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import type { StartShop } from '../../src/ui/start-shop/start-shop.ts';
import '../../src/ui/start-shop/start-shop.ts';
import {
  button,
  drawn,
  expect,
  expectAccessible,
  heard,
  html,
  place,
  radio,
  text,
} from './harness.ts';

const placeStart = (units = 'us') =>
  place<StartShop>(html`<dc-start-shop .units=${units}></dc-start-shop>`);
const box = (name: string) => page.getByRole('textbox', { name, exact: true });

async function type(name: string, words: string): Promise<void> {
  await box(name).fill(words);
  await userEvent.tab();
  await drawn();
}

describe('the start of a shop', () => {
  it('is accessible, with an example and with points of one’s own', async () => {
    const start = await placeStart();
    await expectAccessible(start);
    await radio('Points of my own').click();
    await drawn();
    await expectAccessible(start);
  });

  it('gives a shop at once, from what it shows', async () => {
    const start = await placeStart('metric');
    const events = heard(start, 'dc-start');
    await button('Open the shop').click();
    const { shop } = events[0]!;
    expect(shop.collector.curve.id).toBe('cyclone-3hp-14in');
    expect(shop.sections.map(({ length, pipe }) => [length, pipe])).toEqual([
      [6, { kind: 'catalogue', family: 'galvanised-spiral', size: '150mm' }],
      [2, { kind: 'catalogue', family: 'galvanised-spiral', size: '125mm' }],
    ]);
    expect(shop.drops[0]).toMatchObject({ name: 'Table saw', machine: 'table-saw' });
  });

  it('takes what is typed: example, lengths, pipes, machine and name', async () => {
    const start = await placeStart();
    const events = heard(start, 'dc-start');
    await page
      .getByRole('combobox', { name: 'Example' })
      .selectOptions('2 hp canister unit, 12 in. wheel');
    await type('Length of the main', '24\' 6"');
    await page.getByRole('combobox', { name: 'Machine' }).selectOptions('drum sander');
    await drawn();
    expect((box('Name of the drop').element() as HTMLInputElement).value).toBe('Drum sander');
    await page.getByRole('combobox', { name: 'Size' }).nth(1).selectOptions('4 in.');
    await type('Length of its pipe', '3 m');
    await type('Name of the shop', 'Shed');
    await button('Open the shop').click();
    const { shop } = events[0]!;
    expect(shop.name).toBe('Shed');
    expect(shop.collector.curve.id).toBe('canister-unit-2hp');
    expect(shop.sections[0]!.length).toBeCloseTo(7.4676, 9);
    expect(shop.sections[1]).toMatchObject({ length: 3, pipe: { size: '4in' } });
    expect(shop.drops[0]).toMatchObject({ id: 'drum-sander', machine: 'drum-sander' });
  });

  it('asks for points before it opens a shop with one’s own', async () => {
    const start = await placeStart();
    const events = heard(start, 'dc-start');
    await radio('Points of my own').click();
    await button('Open the shop').click();
    expect(page.getByRole('alert').element().textContent).toMatch(/two points at least/);
    for (const [name, words] of [
      ['Flow of point 1', '0'],
      ['Fan static pressure of point 1', '9'],
      ['Flow of point 2', '1000'],
      ['Fan static pressure of point 2', '2'],
    ] as const) {
      await type(name, words);
    }
    await page.getByRole('radio', { name: /at a tap/ }).click();
    await page.getByRole('checkbox', { name: 'its clean filter' }).click();
    await button('Open the shop').click();
    const { curve } = events[0]!.shop.collector;
    expect(curve.points.map(({ pressure }) => pressure)).toEqual([2241.80019, 498.17782]);
    expect(curve.basis).toEqual({ kind: 'tap', diameter: 0.1524 });
    expect(curve.includes).toEqual({ filter: true, separator: false });
  });

  it('opens nothing while something typed is not understood, and goes there', async () => {
    const start = await placeStart();
    const events = heard(start, 'dc-start');
    await type('Length of the main', 'quite long');
    await button('Open the shop').click();
    expect(events).toEqual([]);
    expect(text(/“Length of the main” holds something/).elements()).toHaveLength(1);
    await type('Length of the main', '20 ft');
    await button('Open the shop').click();
    expect(events).toHaveLength(1);
  });

  it('says what it takes for the rest, in the reader’s units', async () => {
    await placeStart();
    expect(text(/Air of 68.°F and 50.% humidity.*3,500 to 4,500.ft\/min/).elements()).toHaveLength(
      1,
    );
  });
});
