// The built page without a network: it is loaded once, its server is shut down, and the main job is
// done. Then a new version is served: it is offered, and used when the reader asks for it, not before.
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { type PreviewServer, preview } from 'vite';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { writeServiceWorker } from '../../src/app/build/service-worker.ts';
import { launchChromium } from '../setup/launch-chromium.ts';
import { repository } from '../setup/source-files.ts';
import { unfoldAll } from '../setup/unfold-all.ts';
import { watchPage } from '../setup/watch-page.ts';

describe('without a network', () => {
  let browser: Browser;
  let folder: string;
  let server: PreviewServer | undefined;
  beforeAll(async () => {
    browser = await launchChromium();
    folder = mkdtempSync(join(tmpdir(), 'dropcurve-offline-'));
    cpSync(inject('pageFolder'), folder, { recursive: true });
  });
  afterAll(async () => {
    await browser.close();
    await shutDown();
    rmSync(folder, { recursive: true, force: true });
  });

  async function serve(port = 0): Promise<string> {
    server = await preview({
      configFile: join(repository, 'vite.config.ts'),
      logLevel: 'error',
      // What is missing is missing, as on a host.
      appType: 'mpa',
      build: { outDir: folder },
      preview: { host: '127.0.0.1', port, strictPort: port !== 0 },
    });
    return server.resolvedUrls?.local[0] ?? '';
  }
  async function shutDown(): Promise<void> {
    if (server && 'closeAllConnections' in server.httpServer)
      server.httpServer.closeAllConnections();
    await server?.close();
    server = undefined;
  }
  const press = (page: Page, name: string) =>
    page.getByRole('button', { name, exact: true }).first().click();
  const type = async (page: Page, name: string, words: string) => {
    await page.getByRole('textbox', { name, exact: true }).last().fill(words);
    await page.keyboard.press('Enter');
  };
  const offer = (page: Page) => page.getByText(/^A new version of this page is ready/);

  it('does the main job, and takes a new version when asked to', async () => {
    const address = await serve();
    const context = await browser.newContext({ locale: 'en-US', acceptDownloads: true });
    const page = await context.newPage();
    const complaints = await watchPage(page, address);
    await page.goto(address);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);

    await shutDown();
    await expect(fetch(address)).rejects.toThrow();
    await page.reload();
    await page.getByRole('slider').first().waitFor();
    await unfoldAll(page);
    await page.getByRole('slider', { name: 'How blind the filter is' }).waitFor();
    await press(page, 'Only Lathe');
    await page
      .getByText(/^Lathe open/)
      .first()
      .waitFor();
    await press(page, 'Start my own');
    await page.getByRole('combobox', { name: 'Machine' }).selectOption({ label: 'drum sander' });
    await type(page, 'Name of the shop', 'Off the grid');
    await press(page, 'Open the shop');
    await page
      .getByText(/^Drum sander open/)
      .first()
      .waitFor();
    await press(page, 'Shops');
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      press(page, 'Save as a file: Off the grid'),
    ]);
    expect(readFileSync(await download.path(), 'utf8')).toContain('"Off the grid"');
    await press(page, 'Back to Off the grid');
    expect(await offer(page).count()).toBe(0);

    const index = readFileSync(join(folder, 'index.html'), 'utf8');
    writeFileSync(join(folder, 'index.html'), index.replace('<title>', '<title>Newer '));
    await writeServiceWorker(folder);
    await serve(Number(new URL(address).port));
    await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
    await offer(page).waitFor();
    expect(await page.title()).toBe('Dropcurve');
    await unfoldAll(page);
    await type(page, 'Height above the sea', '900 m');
    expect(await page.title()).toBe('Dropcurve');
    await press(page, 'Use it now');
    await expect.poll(() => page.title(), { timeout: 20_000 }).toBe('Newer Dropcurve');
    await page.getByRole('slider').first().waitFor();
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Off the grid');
    const air = await page
      .locator('dc-shop-desk')
      .evaluate(
        (desk: HTMLElementTagNameMap['dc-shop-desk']) =>
          desk.shelf?.open.value.session.shop.value.air,
      );
    expect(air).toMatchObject({ altitude: 900 });
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('is refused whole where a part of a new version can’t be fetched', async () => {
    const address = server?.resolvedUrls?.local[0] ?? (await serve());
    const context = await browser.newContext({ locale: 'en-US' });
    const page = await context.newPage();
    await page.goto(address);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    writeFileSync(join(folder, 'new-part.js'), 'newer');
    await writeServiceWorker(folder);
    const files = readFileSync(join(folder, 'sw.js'), 'utf8');
    writeFileSync(join(folder, 'sw.js'), files.replace('./new-part.js', './missing-part.js'));
    const failed = await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      await registration.update().catch(() => {});
      await new Promise((resolve) => setTimeout(resolve, 1500));
      return registration.waiting === null;
    });
    expect(failed).toBe(true);
    expect(await offer(page).count()).toBe(0);
    await context.close();
  });

  it('can be installed: a manifest with icons of its own, of the sizes that it says', async () => {
    const manifest = JSON.parse(readFileSync(join(folder, 'manifest.webmanifest'), 'utf8')) as {
      icons: { src: string; sizes: string }[];
    };
    for (const { src, sizes } of manifest.icons) {
      const picture = readFileSync(join(folder, src));
      if (!src.endsWith('.png')) continue;
      // Width and height stand at bytes 16 and 20 of a PNG (ISO/IEC 15948).
      expect(`${picture.readUInt32BE(16)}x${picture.readUInt32BE(20)}`).toBe(sizes);
    }
    expect(manifest.icons.length).toBeGreaterThanOrEqual(3);
  });
});
