// `npm run screenshots`: pictures of every view of the built page in three sizes, light and dark,
// and one sheet for each view with its pictures side by side. All in screenshots/.
// With names of views behind it, only those: `npm run screenshots -- first shops`.
import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { launchChromium } from './launch-chromium.ts';
import { openPage, pageView, pageViews, type PageView } from './page-views.ts';
import { servePage } from './serve-page.ts';
import { repository } from './source-files.ts';

const folder = join(repository, 'screenshots');
const sizes = [
  { width: 1440, height: 900 },
  { width: 820, height: 1180 },
  { width: 390, height: 844 },
] as const;
const schemes = ['light', 'dark'] as const;

interface Picture {
  readonly name: string;
  readonly width: number;
  readonly data: string;
}

async function visit(
  browser: Browser,
  view: PageView,
  options: { width: number; height: number; scheme: 'light' | 'dark' },
): Promise<Page> {
  const { width, height, scheme } = options;
  const page = await browser.newPage({
    viewport: { width, height },
    colorScheme: scheme,
    locale: 'en-US',
    reducedMotion: 'reduce',
  });
  page.on('pageerror', (error) => console.log(`${view.name}: ${error.message}`));
  await openPage(page, address, view);
  await page.waitForTimeout(300);
  return page;
}

async function take(page: Page, name: string, kind: 'view' | 'whole'): Promise<Picture> {
  const path = join(folder, `${name}-${kind}.png`);
  // What sticks to the top of the window would else lie in the middle of a whole page.
  await page.evaluate(() => scrollTo(0, 0));
  const data = await page.screenshot({ path, fullPage: kind === 'whole' });
  return {
    name: `${name} ${kind}`,
    width: page.viewportSize()!.width,
    data: data.toString('base64'),
  };
}

/** The first view as it fills the screen too; all others in whole. */
async function takeView(browser: Browser, view: PageView): Promise<void> {
  const pictures: Picture[] = [];
  for (const scheme of schemes) {
    for (const size of sizes) {
      const page = await visit(browser, view, { ...size, scheme });
      const name = `${view.name}-${size.width}-${scheme}`;
      if (view.name === 'first') pictures.push(await take(page, name, 'view'));
      pictures.push(await take(page, name, 'whole'));
      await page.close();
    }
  }
  await sheet(browser, view.name, pictures);
}

/** Pictures side by side at a third of their size. */
async function sheet(browser: Browser, name: string, pictures: readonly Picture[]): Promise<void> {
  const figures = pictures.map(
    ({ name: words, width, data }) =>
      `<figure><img width="${width / 3}" src="data:image/png;base64,${data}"><figcaption>${words}</figcaption></figure>`,
  );
  const page = await browser.newPage({ viewport: { width: 1900, height: 900 } });
  await page.setContent(
    `<style>body{display:flex;flex-wrap:wrap;gap:16px;align-items:start;margin:16px;font:13px sans-serif;background:#888}figure{margin:0}</style>${figures.join('')}`,
  );
  await page.screenshot({ path: join(folder, `sheet-${name}.png`), fullPage: true });
  await page.close();
}

const wanted = process.argv.slice(2);
const views = wanted.length === 0 ? pageViews : wanted.map(pageView);
if (wanted.length === 0) rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
const served = await servePage();
const { address } = served;
const browser = await launchChromium();
try {
  for (const view of views) {
    await takeView(browser, view);
    console.log(view.name);
  }
  console.log(`pictures of ${views.length} views, each with a sheet, are in ${folder}`);
} finally {
  await browser.close();
  await served.close();
}
