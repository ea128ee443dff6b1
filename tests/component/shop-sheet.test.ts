import { describe, it } from 'vitest';
import { page } from 'vitest/browser';
import { Session } from '../../src/state/session.ts';
import { readSheet } from '../../src/ui/shop-sheet/read-sheet.ts';
import type { ShopSheet } from '../../src/ui/shop-sheet/shop-sheet.ts';
import '../../src/ui/shop-sheet/shop-sheet.ts';
import { branchedShop } from '../setup/branched-shop.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { drawn, expect, expectAccessible, html, place, text } from './harness.ts';

const printed = new Date(2026, 2, 9);
const placeSheet = async (units: 'us' | 'metric', shop = demoShop()) => {
  const session = new Session(shop, [shop.drops[0]!.id], units);
  const sheet = await place<ShopSheet>(
    html`<dc-shop-sheet .sheet=${readSheet(session, printed)}></dc-shop-sheet>`,
  );
  await drawn();
  return sheet;
};
/** Whatever is wider than the box that it stands in. */
const clipped = (sheet: ShopSheet) =>
  [...sheet.renderRoot.querySelectorAll<HTMLElement>('h1, h2, p, th, td')]
    .filter(({ scrollWidth, clientWidth }) => scrollWidth > clientWidth + 1)
    .map(({ textContent }) => textContent);

describe('the sheet of a shop', () => {
  it('is accessible', async () => {
    await expectAccessible(await placeSheet('us'));
  });

  it('has everything that is printed, the cautions once', async () => {
    const sheet = await placeSheet('us');
    expect(sheet.isDrawn).toBe(true);
    const headings = page.getByRole('heading').elements();
    expect(headings.map(({ textContent }) => textContent)).toEqual([
      'Heron Lane paddle works',
      'The run of ducts, as the gates stand now',
      'Operating point',
      'Note',
      'Each drop alone',
      'Saved sets',
      'Cut list',
      'How to cut the pipe',
      'What was assumed, and where each figure comes from',
      'Before you build on these numbers',
    ]);
    await expect.element(text('Printed 9 March 2026')).toBeVisible();
    expect(text(/^Table saw open: /).elements().length).toBeGreaterThan(0);
    await expect
      .element(page.getByRole('row', { name: /^Drum sander .* tight: 6,290.ft\/min/ }))
      .toBeVisible();
  });

  it('speaks metric', async () => {
    await placeSheet('metric');
    await expect
      .element(page.getByRole('row', { name: /^Galvanised .* 11 lengths of 3.00.m/ }))
      .toBeVisible();
    await expect
      .element(page.getByRole('columnheader', { name: 'Slowest m/s' }).first())
      .toBeVisible();
  });

  it('has columns for prices where there are any, with the total', async () => {
    const demo = demoShop();
    const prices = [{ item: 'gate-6in', price: 1018.25 }];
    await placeSheet('us', { ...demo, purchase: { currency: 'USD', prices } });
    await expect.element(page.getByRole('columnheader', { name: 'Cost USD' })).toBeVisible();
    await expect
      .element(
        page.getByRole('row', { name: /^Total so far; 29 items have no price 10,182.50.USD/ }),
      )
      .toBeVisible();
  });

  it.each(['us', 'metric'] as const)(
    'clips no text, whatever the names and prices: %s',
    async (units) => {
      const demo = demoShop();
      const long = 'Sägewerkstattabsaugungsverteilerkasten-'.repeat(4);
      const prices = [
        { item: 'pipe-galvanised-spiral-6in', price: 999_999.99 },
        { item: 'gate-6in', price: 123_456.78 },
      ];
      const sheet = await placeSheet(units, {
        ...demo,
        name: long,
        sections: demo.sections.map((section) => ({ ...section, name: long })),
        drops: demo.drops.map((drop) => ({ ...drop, name: long })),
        purchase: { currency: 'USD', prices },
      });
      expect(sheet.scrollWidth).toBeLessThanOrEqual(700);
      expect(clipped(sheet)).toEqual([]);
    },
  );

  it('gives the drawing no more than a page, however many drops there are', async () => {
    const sheet = await placeSheet('us', branchedShop(15, 8));
    const drawing = sheet.renderRoot.querySelector('dc-run-drawing')!;
    // Letter less 12 mm at its top and bottom, and less the heading.
    expect(drawing.getBoundingClientRect().height).toBeLessThan(965 - 40);
    expect(sheet.isDrawn).toBe(true);
  });
});
