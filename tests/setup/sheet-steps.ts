// How a reader comes to the printed sheet; the browser's own print window never opens.
import type { Page } from 'playwright-core';
import type { Shop } from '../../src/shop/schema/shop-schema.ts';

/** Unfolds the part with the sheet and waits for what it holds. */
export async function unfoldSheetPart(page: Page): Promise<void> {
  await page.getByRole('heading', { level: 2, name: 'Shop sheet and cut list' }).click();
  await page.getByRole('button', { name: 'Print the sheet' }).waitFor();
}

/** Presses the button; done when the page asks to be printed. */
export async function pressPrint(page: Page): Promise<void> {
  await page.evaluate(() => {
    document.documentElement.dataset['asked'] = '0';
    globalThis.print = () => {
      document.documentElement.dataset['asked'] = '1';
    };
  });
  await unfoldSheetPart(page);
  await page.getByRole('button', { name: 'Print the sheet' }).click();
  await page.locator('html[data-asked="1"]').waitFor();
}

/** Waits for the sheet, which is loaded once the page has come to rest; then the page is as it was. */
export async function untilSheetLoaded(page: Page): Promise<void> {
  await page.waitForFunction(
    () => dispatchEvent(new Event('beforeprint')) && document.querySelector('dc-shop-sheet'),
    undefined,
    { polling: 200 },
  );
  await page.keyboard.press('Shift');
  await page.waitForFunction(() => !document.querySelector('dc-shop-sheet'));
}

/** Opens a shop from a file of its own. */
export async function openShopFile(page: Page, shop: Shop): Promise<void> {
  await page.getByRole('button', { name: 'Shops', exact: true }).click();
  await page.getByLabel('Open a file').setInputFiles({
    name: 'shop.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(shop)),
  });
  await page.getByRole('heading', { level: 1, name: shop.name }).waitFor();
  await page.getByRole('slider').first().waitFor();
}
