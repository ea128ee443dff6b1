// `npm run print-sheet`: builds the page, prints the sheets of the demo, of a shop of three drops and of
// one of forty by the browser's own command to PDF on A4 and Letter, and draws every page of them in the
// greys of a printer without colours, all in screenshots/sheets/. Needs pdftoppm, of poppler-utils, for
// the pictures.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import type { Section } from '../../src/shop/schema/section-schema.ts';
import type { Shop } from '../../src/shop/schema/shop-schema.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { branchedShop } from './branched-shop.ts';
import { launchChromium } from './launch-chromium.ts';
import { openWhole } from './open-whole.ts';
import { servePage } from './serve-page.ts';
import { openShopFile, untilSheetLoaded } from './sheet-steps.ts';
import { repository } from './source-files.ts';

const folder = join(repository, 'screenshots', 'sheets');
const papers = ['A4', 'Letter'] as const;
/** Dots to the inch. */
const DENSITY = 80;

const priced: Shop = {
  ...demoShop(),
  purchase: {
    currency: 'USD',
    stockLengths: [{ family: 'galvanised-spiral', length: 1.524 }],
    prices: [
      { item: 'pipe-galvanised-spiral-6in', price: 24.5 },
      { item: 'pipe-pvc-sewer-d2729-6in', price: 31 },
      { item: 'gate-6in', price: 1018.25 },
    ],
  },
};
const forty: Shop = {
  ...branchedShop(5, 8),
  gateSets: [{ id: 'first', name: 'The first line', open: ['drop-1-1', 'drop-1-2'] }],
};
/** What a small shop keeps of the demo: a saw with its guard, and a planer at the end of the main. */
const KEPT = ['main-2', 'main-3', 'saw-guard', 'saw-guard-hose', 'table-saw', 'planer'];
const PLACES: Readonly<Record<string, Partial<Section>>> = {
  'main-2': { into: 'collector' },
  planer: { into: 'main-3', join: { kind: 'momentum', angle: 0 } },
};
const three: Shop = {
  ...demoShop(),
  name: 'Shed of three machines',
  note: 'Invented, as all its figures are.',
  sections: demoShop()
    .sections.filter(({ id }) => KEPT.includes(id))
    .map(({ join, ...each }) => ({
      ...each,
      ...(join === undefined || each.id === 'main-2' ? {} : { join }),
      ...PLACES[each.id],
    })),
  drops: demoShop()
    .drops.filter(({ id }) => ['table-saw', 'blade-guard', 'planer'].includes(id))
    .map((each) => (each.id === 'planer' ? { ...each, into: 'planer' } : each)),
  gateSets: [],
};
const sheets = [
  { name: 'three-us', shop: three, locale: 'en-US' },
  { name: 'demo-us', shop: undefined, locale: 'en-US' },
  { name: 'priced-metric', shop: priced, locale: 'de-DE' },
  { name: 'forty-us', shop: forty, locale: 'en-US' },
] as const;

/** Pictures of each page of a file. */
function draw(file: string): void {
  const picture = join(folder, file.replace(/\.pdf$/, ''));
  const options = ['-r', String(DENSITY), '-gray', '-png', join(folder, file), picture];
  const run = spawnSync('pdftoppm', options, { encoding: 'utf8' });
  if (run.error || run.status !== 0)
    throw new Error(`no pictures: ${run.error?.message ?? run.stderr}`);
}

async function visit(browser: Browser, sheet: (typeof sheets)[number]): Promise<Page> {
  const page = await browser.newPage({
    viewport: { width: 1440, height: 900 },
    locale: sheet.locale,
  });
  page.on('pageerror', (error) => console.log(`${sheet.name}: ${error.message}`));
  await openWhole(page, address);
  if (sheet.shop) await openShopFile(page, sheet.shop);
  return page;
}

rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
const served = await servePage();
const { address } = served;
const browser = await launchChromium();
try {
  for (const sheet of sheets) {
    const page = await visit(browser, sheet);
    await untilSheetLoaded(page);
    for (const format of papers) {
      const file = `${sheet.name}-${format}.pdf`;
      await page.pdf({ path: join(folder, file), preferCSSPageSize: false, format });
      draw(file);
    }
    await page.close();
  }
  const pages = readdirSync(folder).filter((name) => name.endsWith('.png'));
  console.log(
    `${pages.length} pages of ${sheets.length} sheets on ${papers.join(' and ')} are in ${folder}`,
  );
} finally {
  await browser.close();
  await served.close();
}
