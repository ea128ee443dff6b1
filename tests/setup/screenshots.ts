// `npm run screenshots`: pictures of the built page in three sizes, light and dark, and one sheet
// with all of them side by side, in screenshots/.
import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { launchChromium } from './launch-chromium.ts';
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
  readonly whole: string;
  readonly view: string;
}

async function take(
  browser: Browser,
  address: string,
  size: (typeof sizes)[number],
  scheme: (typeof schemes)[number],
): Promise<Picture> {
  const name = `${size.width}-${scheme}`;
  const page = await browser.newPage({ viewport: size, colorScheme: scheme });
  page.on('pageerror', (error) => console.log(`${name}: ${error.message}`));
  await page.goto(address, { waitUntil: 'load' });
  await page.waitForTimeout(500);
  const view = await page.screenshot({ path: join(folder, `${name}-view.png`) });
  const whole = await page.screenshot({ path: join(folder, `${name}-whole.png`), fullPage: true });
  await page.close();
  return { name, view: view.toString('base64'), whole: whole.toString('base64') };
}

/** Views in the first row, whole pages in the second, all at a third of their size. */
async function sheet(browser: Browser, pictures: readonly Picture[]): Promise<void> {
  const row = (kind: 'view' | 'whole') =>
    pictures
      .map(({ name, [kind]: data }) => {
        const width = Number.parseInt(name, 10) / 3;
        return `<figure><img width="${width}" src="data:image/png;base64,${data}"><figcaption>${name} ${kind}</figcaption></figure>`;
      })
      .join('');
  const page = await browser.newPage({ viewport: { width: 1900, height: 900 } });
  await page.setContent(
    `<style>body{margin:16px;font:13px sans-serif;background:#888}div{display:flex;gap:16px;align-items:start}figure{margin:0 0 16px}</style><div>${row('view')}</div><div>${row('whole')}</div>`,
  );
  await page.screenshot({ path: join(folder, 'sheet.png'), fullPage: true });
  await page.close();
}

rmSync(folder, { recursive: true, force: true });
mkdirSync(folder);
const served = await servePage();
const browser = await launchChromium();
try {
  const pictures: Picture[] = [];
  for (const scheme of schemes) {
    for (const size of sizes) pictures.push(await take(browser, served.address, size, scheme));
  }
  await sheet(browser, pictures);
  console.log(`${2 * pictures.length} pictures and sheet.png are in ${folder}`);
} finally {
  await browser.close();
  await served.close();
}
