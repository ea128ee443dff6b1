// The page in one HTML file, opened from the disk: everything is in it, it asks for nothing else, and
// it does the main job. It is offered for download in the list of shops.
import { copyFileSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { SINGLE_FILE } from '../../src/app/build/single-file.ts';
import { launchChromium } from '../setup/launch-chromium.ts';
import { unfoldAll } from '../setup/unfold-all.ts';
import { watchPage } from '../setup/watch-page.ts';

describe('the page in one file', () => {
  let browser: Browser;
  let folder: string;
  let file: string;
  beforeAll(async () => {
    browser = await launchChromium();
    // Alone in a folder of its own: nothing beside it can help.
    folder = mkdtempSync(join(tmpdir(), 'dropcurve-stick-'));
    file = join(folder, 'on a stick.html');
    copyFileSync(join(inject('pageFolder'), SINGLE_FILE), file);
  });
  afterAll(async () => {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  });
  const press = (page: Page, name: string) =>
    page.getByRole('button', { name, exact: true }).first().click();

  it('opens from the disk and does the main job', async () => {
    const address = pathToFileURL(file).href;
    const page = await browser.newPage({ locale: 'en-US', acceptDownloads: true });
    const complaints = await watchPage(page, address);
    await page.goto(address);
    await page.getByRole('slider').first().waitFor();
    await unfoldAll(page);
    await page.getByRole('slider', { name: 'How blind the filter is' }).waitFor();
    // What a worker answers.
    await page.locator('dc-reach-panel').scrollIntoViewIfNeeded();
    await page
      .getByText(/ can reach /)
      .first()
      .waitFor();
    await press(page, 'Only Lathe');
    await page
      .getByText(/^Lathe open/)
      .first()
      .waitFor();
    await press(page, 'Start my own');
    await page.getByRole('textbox', { name: 'Name of the shop' }).fill('From a stick');
    await page.keyboard.press('Enter');
    await press(page, 'Open the shop');
    await page.getByRole('heading', { level: 1, name: 'From a stick' }).waitFor();
    await press(page, 'Shops');
    expect(await page.getByRole('link', { name: /one file/ }).count()).toBe(0);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      press(page, 'Save as a file: From a stick'),
    ]);
    expect(readFileSync(await download.path(), 'utf8')).toContain('"From a stick"');
    await page.reload();
    await page.getByRole('slider').first().waitFor();
    const isKept = (await page.getByRole('heading', { level: 1 }).textContent()) === 'From a stick';
    const isSaid =
      (await page.getByText(/What you enter lasts while the page is open/).count()) > 0;
    expect(isKept || isSaid).toBe(true);
    expect(complaints).toEqual([]);
    await page.close();
  });

  it('is offered for download by the page, whole', async () => {
    const page = await browser.newPage({ locale: 'en-US', acceptDownloads: true });
    await page.goto(inject('pageAddress'));
    await page.getByRole('slider').first().waitFor();
    await press(page, 'Shops');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('link', { name: /one file/ }).click(),
    ]);
    expect(download.suggestedFilename()).toBe(SINGLE_FILE);
    expect(readFileSync(await download.path()).equals(readFileSync(file))).toBe(true);
    await page.close();
  });

  it('names nothing outside itself', () => {
    const text = readFileSync(file, 'utf8');
    expect(text).not.toMatch(/<(?:script|link|img)[^>]+(?:src|href)="(?!data:)/);
    expect(text).toMatch(/script-src 'sha256-[\w+/=]+'; style-src 'sha256-[\w+/=]+'/);
  });
});
