// The page over plain HTTP, as from a box in the shop's own network: browsers withhold locks, service
// workers, the clipboard and more there, and the page does its job without them.
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchChromium } from '../setup/launch-chromium.ts';
import { watchPage } from '../setup/watch-page.ts';

const built = inject('pageAddress');
/** An address that the browser does not trust; what is asked of it comes from the built page. */
const address = 'http://box.test/';

describe('the page over plain HTTP', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchChromium();
  });
  afterAll(() => browser.close());

  it('opens, keeps a shop of one’s own, and copies a table or says how else', async () => {
    const context = await browser.newContext({ locale: 'en-US' });
    await context.route(`${address}**`, async (route) => {
      const asked = route.request().url().replace(address, built);
      await route.fulfill({ response: await context.request.get(asked) });
    });
    const page = await context.newPage();
    const complaints = await watchPage(page, address);
    await page.goto(address);
    expect(await page.evaluate(() => isSecureContext)).toBe(false);
    await page.getByRole('slider').first().waitFor();

    await page.getByRole('button', { name: 'Start my own', exact: true }).click();
    await page.getByRole('textbox', { name: 'Name of the shop' }).fill('By the box');
    await page.getByRole('button', { name: 'Open the shop' }).click();
    await page.getByRole('heading', { name: 'By the box', level: 1 }).waitFor();
    await page.reload();
    await page.getByRole('heading', { name: 'By the box', level: 1 }).waitFor();

    await page
      .getByRole('button', { name: /^Figures of the operating plot/ })
      .first()
      .click();
    await page
      .getByRole('button', { name: /^Copy as text/ })
      .first()
      .click();
    await page
      .getByText(/does not allow copying here/)
      .first()
      .waitFor();
    expect(complaints).toEqual([]);
    await context.close();
  });
});
