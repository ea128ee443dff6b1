// Shops that leave the built page and come back to it: a link, an archive, a file that is saved in
// place, a table as CSV; and names with markup in them, which stay names.
import { readFileSync } from 'node:fs';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { packShop } from '../../src/shop/link/pack-shop.ts';
import { deflated } from '../../src/shop/link/deflate.ts';
import { launchChromium } from '../setup/launch-chromium.ts';
import { sixtySections } from '../setup/sixty-sections.ts';
import { watchPage } from '../setup/watch-page.ts';
import { smallShop } from '../unit/shop/small-shop.ts';

const address = inject('pageAddress');
type Desk = HTMLElementTagNameMap['dc-shop-desk'];

describe('files and links', () => {
  let browser: Browser;
  let context: BrowserContext;
  let page: Page;
  let complaints: string[];
  beforeAll(async () => {
    browser = await launchChromium();
  });
  afterAll(() => browser.close());

  async function visit(hash = ''): Promise<void> {
    context = await browser.newContext({
      locale: 'en-US',
      acceptDownloads: true,
      permissions: ['clipboard-read', 'clipboard-write'],
    });
    page = await context.newPage();
    complaints = await watchPage(page, address);
    await page.goto(address + hash);
    await page.getByRole('slider').first().waitFor();
  }
  const press = (name: string) => page.getByRole('button', { name, exact: true }).first().click();
  const title = () => page.getByRole('heading', { level: 1 }).textContent();
  const copied = () => page.evaluate(() => navigator.clipboard.readText());

  it('copies a link to a shop, which opens as a copy on another device', async () => {
    await visit();
    await page
      .locator('dc-shop-desk')
      .evaluate((desk: Desk, shop) => desk.shelf?.add(shop), sixtySections(7));
    await press('Shops');
    await press('Copy a link: Sixty sections');
    await page.getByText(/^A link that holds “Sixty sections” was copied/).waitFor();
    const link = await copied();
    expect(link.startsWith(`${address}#shop=1.`)).toBe(true);
    expect(link.length).toBeLessThan(2000);
    expect(complaints).toEqual([]);
    await context.close();

    await visit(link.slice(address.length));
    await page.getByText(/was opened from a link, as a copy/).waitFor();
    expect(await title()).toBe('Sixty sections');
    expect(page.url()).toBe(address);
    await page.reload();
    await page.getByRole('slider').first().waitFor();
    expect(await title()).toBe('Sixty sections');
    await press('Shops');
    await expect.poll(() => page.getByRole('listitem').count()).toBe(1);
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('refuses a broken link in words, and takes markup in a name for a name', async () => {
    const name = '<img src=x onerror="document.title=1"><script>document.title=2</script>';
    const shop = {
      ...smallShop,
      name,
      drops: smallShop.drops.map((drop) => ({ ...drop, name })),
      sections: smallShop.sections.map((section) => ({ ...section, name })),
    };
    await visit(`#shop=1.${await deflated(packShop(shop))}`);
    await page.getByText(/was opened from a link/).waitFor();
    expect(await title()).toBe(name);
    await page.evaluate(() => {
      location.hash = '#shop=1.broken';
    });
    await page.getByText('The link was not opened. What was open stays open.').waitFor();
    expect(await page.title()).toBe('Dropcurve');
    expect(await title()).toBe(name);
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('saves all shops in one file and opens them again', async () => {
    await visit();
    await page
      .locator('dc-shop-desk')
      .evaluate(
        (desk: Desk, shop) => desk.shelf?.add({ ...shop, name: 'One' }, { ...shop, name: 'Two' }),
        smallShop,
      );
    await press('Shops');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      press('Save all in one file'),
    ]);
    const text = readFileSync(await download.path(), 'utf8');
    await context.close();
    await visit();
    await press('Shops');
    await page.getByLabel('Open a file').setInputFiles({
      name: download.suggestedFilename(),
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    });
    await page.getByText('2 of 2 shops were opened').waitFor();
    expect(await title()).toBe('One');
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('keeps saving to a file in place, and stops where another program has changed it', async () => {
    await visit();
    // The picker is the browser's own window; the file it would give is one of the page's own.
    await page.evaluate(async () => {
      const folder = await navigator.storage.getDirectory();
      const file = await folder.getFileHandle('shed.json', { create: true });
      Object.assign(globalThis, { showSaveFilePicker: async () => file });
    });
    const inFile = () =>
      page.evaluate(async () => {
        const folder = await navigator.storage.getDirectory();
        const file = await (await folder.getFileHandle('shed.json')).getFile();
        return file.text();
      });
    const rename = (name: string) =>
      page.locator('dc-shop-desk').evaluate((desk: Desk, name) => {
        desk.shelf?.open.value.session.edit((shop) => ({ ...shop, name }));
      }, name);
    await rename('Shed');
    await press('Shops');
    await press('Keep saving to a file');
    await page.getByRole('button', { name: 'Stop saving to shed.json' }).waitFor();
    await rename('Shed, later');
    await expect.poll(async () => (await inFile()).includes('"Shed, later"')).toBe(true);
    await page.evaluate(async () => {
      const folder = await navigator.storage.getDirectory();
      const file = await folder.getFileHandle('shed.json');
      const stream = await file.createWritable();
      await stream.write('of another program');
      await stream.close();
    });
    await rename('Shed, last');
    await page.getByText(/“shed.json” was changed by another program/).waitFor();
    expect(await inFile()).toBe('of another program');
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('gives a table as CSV and as text', async () => {
    await visit();
    await page.getByText('Figures', { exact: false }).first().click();
    const save = page.getByRole('button', { name: /^Save as CSV: / }).first();
    const [download] = await Promise.all([page.waitForEvent('download'), save.click()]);
    expect(download.suggestedFilename()).toMatch(/\.csv$/);
    const text = readFileSync(await download.path(), 'utf8');
    expect(text.startsWith('\uFEFF')).toBe(true);
    expect(text.split('\r\n').length).toBeGreaterThan(3);
    await page
      .getByRole('button', { name: /^Copy as text: / })
      .first()
      .click();
    await page.getByText('Copied.').waitFor();
    expect((await copied()).split('\n')[1]).toContain('\t');
    expect(complaints).toEqual([]);
    await context.close();
  });
});
