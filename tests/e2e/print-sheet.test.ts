// The command that prints the shop, in the built page under its policy: the sheet is whole when the page
// asks to be printed, on paper there is nothing else, and the page is as before when the reader is back.
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchChromium } from '../setup/launch-chromium.ts';
import { pressPrint, untilSheetLoaded } from '../setup/sheet-steps.ts';
import { watchPage } from '../setup/watch-page.ts';

const address = inject('pageAddress');

describe('printing the sheet', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchChromium();
  });
  afterAll(() => browser.close());

  async function visit(): Promise<{ page: Page; complaints: string[] }> {
    const context = await browser.newContext({ locale: 'en-US' });
    const page = await context.newPage();
    const complaints = await watchPage(page, address);
    await page.goto(address);
    await page.getByRole('slider').first().waitFor();
    return { page, complaints };
  }
  const onPaper = (page: Page) =>
    page.evaluate(() =>
      [...document.body.children]
        .filter((each) => each.checkVisibility({ visibilityProperty: true }))
        .map(({ localName }) => localName),
    );

  it('asks to be printed with every part of the sheet drawn, and nothing else on paper', async () => {
    const { page, complaints } = await visit();
    await pressPrint(page);
    expect(await page.title()).toBe('Heron Lane paddle works, shop sheet');
    expect(await onPaper(page)).toEqual(['dc-shop-desk']);
    await page.emulateMedia({ media: 'print' });
    expect(await onPaper(page)).toEqual(['dc-shop-sheet']);
    const sheet = page.locator('dc-shop-sheet');
    for (const part of [
      'Operating point',
      'Each drop alone',
      'Saved sets',
      'Cut list',
      'How to cut the pipe',
      'What was assumed, and where each figure comes from',
      'Before you build on these numbers',
    ]) {
      expect(await sheet.getByRole('heading', { name: part }).count(), part).toBe(1);
    }
    expect(await sheet.locator('svg.run path').count()).toBeGreaterThan(28);
    expect(await sheet.locator('svg.plot text.flow-number').textContent()).toMatch(/cfm/);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it('is no wider than what either paper leaves inside its margins', async () => {
    const { page } = await visit();
    await pressPrint(page);
    await page.emulateMedia({ media: 'print' });
    // What is left of A4 and of Letter inside a margin of 12 mm, 96 px to the inch.
    for (const width of [703, 725]) {
      await page.setViewportSize({ width, height: 1000 });
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(over).toBe(0);
    }
    await page.context().close();
  });

  it('takes the sheet away when the reader is back, and prints anew with what has changed', async () => {
    const { page } = await visit();
    await pressPrint(page);
    await page.getByRole('button', { name: 'Only Lathe' }).click();
    expect(await page.locator('dc-shop-sheet').count()).toBe(0);
    expect(await page.title()).toBe('Dropcurve');
    await page.getByRole('radio', { name: 'metric' }).check();
    await page
      .getByText(/^Lathe open: .*m³\/h/)
      .first()
      .waitFor();
    await page.getByRole('button', { name: 'Print the sheet' }).click();
    const sentence = page.locator('dc-shop-sheet .sentence');
    await expect.poll(() => sentence.count()).toBe(1);
    expect(await sentence.textContent()).toMatch(/^Lathe open: .*m³\/h/);
    await page.context().close();
  });

  it('prints the sheet by the browser’s own command too, where nobody pressed the button', async () => {
    const { page, complaints } = await visit();
    await untilSheetLoaded(page);
    const file = await page.pdf({ format: 'A4' });
    expect(file.subarray(0, 5).toString()).toBe('%PDF-');
    await page.emulateMedia({ media: 'print' });
    expect(await onPaper(page)).toEqual(['dc-shop-sheet']);
    await page.emulateMedia({ media: 'screen' });
    expect(await onPaper(page)).toEqual(['dc-shop-desk']);
    await page.keyboard.press('Shift');
    expect(await page.locator('dc-shop-sheet').count()).toBe(0);
    expect(await page.title()).toBe('Dropcurve');
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it('has the sheet drawn before the browser goes on to print, and one of it, however often', async () => {
    const { page } = await visit();
    await untilSheetLoaded(page);
    // Inside one turn of the page, in which no frame is drawn and no promise is kept.
    const [parts, sheets] = await page.evaluate(() => {
      dispatchEvent(new Event('beforeprint'));
      dispatchEvent(new Event('beforeprint'));
      const laid = [...document.querySelectorAll('dc-shop-sheet')];
      const within = (name: string, what: string) =>
        laid[0]?.shadowRoot?.querySelector(name)?.shadowRoot?.querySelectorAll(what).length ?? 0;
      return [
        {
          ducts: within('dc-run-drawing', 'svg.run path') > 28,
          point: within('dc-operating-plot', 'svg.plot circle.point'),
          cautions: within('dc-cautions', 'li'),
        },
        laid.length,
      ];
    });
    expect(parts).toEqual({ ducts: true, point: 1, cautions: 6 });
    expect(sheets).toBe(1);
    await page.context().close();
  });

  it('prints what is shown where no shop is: the list of shops', async () => {
    const { page, complaints } = await visit();
    await untilSheetLoaded(page);
    await page.getByRole('button', { name: 'Shops', exact: true }).click();
    await page.getByRole('heading', { name: 'Shops' }).first().waitFor();
    await page.pdf({ format: 'A4' });
    await page.emulateMedia({ media: 'print' });
    expect(await onPaper(page)).toEqual(['dc-shop-desk']);
    expect(complaints).toEqual([]);
    await page.context().close();
  });
});
