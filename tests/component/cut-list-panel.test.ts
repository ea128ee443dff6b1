import { describe, it } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { Session } from '../../src/state/session.ts';
import '../../src/ui/cut-list-panel/cut-list-panel.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { button, drawn, expect, expectAccessible, heard, text } from './harness.ts';
import { placeUnder } from './with-session.ts';

const place = async (units: 'us' | 'metric' = 'us') => {
  const session = new Session(demoShop(), ['table-saw'], units);
  const panel = await placeUnder(session, 'dc-cut-list-panel');
  return { session, panel };
};
const box = (name: string | RegExp) => page.getByRole('textbox', { name });
const type = async (name: string | RegExp, words: string) => {
  await box(name).fill(words);
  await userEvent.keyboard('{Enter}');
  await drawn();
};

describe('the part with the cut list', () => {
  it('is accessible, empty and with prices', async () => {
    const { panel, session } = await place();
    await expectAccessible(panel);
    await type('Price of Blast gate 6', '18');
    await type('Price of Blast gate 4', 'cheap');
    expect(session.shop.value.purchase).toEqual({ prices: [{ item: 'gate-6in', price: 18 }] });
    await expectAccessible(panel);
  });

  it('takes a length of stock in any unit, counts anew, and goes back to the usual one', async () => {
    const { session } = await place();
    await expect.element(text(/^11 lengths of 10'.0"/)).toBeVisible();
    await type(/^Galvanised steel, spiral$/, '20 ft');
    expect(session.shop.value.purchase?.stockLengths).toEqual([
      { family: 'galvanised-spiral', length: 6.096 },
    ]);
    await expect.element(text(/^5 lengths of 20'.0"/)).toBeVisible();
    await type(/^Galvanised steel, spiral$/, '');
    expect(session.shop.value.purchase).toBeUndefined();
    await expect.element(text(/^11 lengths of 10'.0"/)).toBeVisible();
  });

  it('says what would be right of a length that is none, and keeps what was typed', async () => {
    const { session } = await place('metric');
    await type(/^Galvanised steel, spiral$/, '3 mm');
    await expect.element(text(/is too little; 0.30.m or more will do/)).toBeVisible();
    await expect.element(box(/^Galvanised steel, spiral$/)).toHaveValue('3 mm');
    expect(session.shop.value.purchase).toBeUndefined();
  });

  it.each([
    ['us', '3.25', 3.25 / 0.3048, '27.72'],
    ['metric', '10', 10, '26.00'],
  ] as const)(
    'takes the price of hose for a foot or a metre: %s',
    async (units, typed, price, sum) => {
      const { session } = await place(units);
      await type('Price of Flexible hose, wire helix, 5', typed);
      const [kept] = session.shop.value.purchase?.prices ?? [];
      expect(kept?.item).toBe('hose-hose-wire-helix-5in');
      expect(kept?.price).toBeCloseTo(price, 9);
      expect(text(sum).elements()).toHaveLength(2);
      await expect.element(text(/^Total so far; 29 items have no price/)).toBeVisible();
      session.undo();
      await drawn();
      expect(text(/^Total/).elements()).toHaveLength(0);
    },
  );

  it('writes the total in the currency that is chosen', async () => {
    const { session } = await place();
    await type('Price of Blast gate 6', '12.5');
    await page.getByRole('combobox', { name: 'Currency of the prices' }).selectOptions('NOK');
    await drawn();
    expect(session.shop.value.purchase?.currency).toBe('NOK');
    await expect.element(text(/^125.00.NOK$/)).toBeVisible();
  });

  it('shows how each length is cut, in the units of the page', async () => {
    const { session } = await place();
    await text(/^PVC sewer and drain pipe, D2729, 6.in\.: 9 ×/).click();
    const cut = () => page.getByRole('listitem').filter({ hasText: 'jointer drop' });
    await expect
      .element(cut())
      .toHaveTextContent(`7' 10 1/2" jointer drop + 1' 9 3/4" floor sweep`);
    session.units.value = 'metric';
    await drawn();
    await expect.element(cut()).toHaveTextContent(/2\.40.m jointer drop \+ 0\.60.m floor sweep/);
  });

  it('has its tables as files, that of the states made when it is wanted', async () => {
    await place();
    const names = page
      .getByRole('button', { name: /^Save as CSV/ })
      .elements()
      .map((each) => each.getAttribute('aria-label'));
    expect(names).toEqual([
      'Save as CSV: Every drop and saved set',
      'Save as CSV: Cut list',
      'Save as CSV: How to cut the pipe',
    ]);
    let file: Blob | undefined;
    const createObjectURL = URL.createObjectURL.bind(URL);
    URL.createObjectURL = (blob: Blob) => {
      file = blob;
      return createObjectURL(blob);
    };
    try {
      await button('Save as CSV: Every drop and saved set').click();
    } finally {
      URL.createObjectURL = createObjectURL;
    }
    const lines = ((await file?.text()) ?? '').trim().split('\r\n');
    expect(lines[0]).toContain('State,Drop,Flow [cfm],Need [cfm],Speed [ft/min]');
    expect(lines).toHaveLength(1 + 12 + 6);
    expect(lines[12]).toMatch(/^alone,Drum sander,\d+,550,6290,/);
  });

  it('has a button that asks for the sheet to be printed', async () => {
    const { panel } = await place();
    const asked = heard(panel, 'dc-print');
    await button('Print the sheet').click();
    expect(asked).toHaveLength(1);
  });
});
