// axe finds nothing on any view of the built page, light or dark, wide or narrow. Every rule is on.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchChromium } from '../setup/launch-chromium.ts';
import { openPage, pageViews } from '../setup/page-views.ts';
import { viewsInTurn } from '../setup/views-in-turn.ts';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core'), 'utf8');

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly target: unknown; readonly failureSummary?: string }[];
}

/** What axe finds, as lines to be read. */
async function faults(page: Page): Promise<string[]> {
  await page.evaluate(axeSource);
  const violations = await page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run(): Promise<{ violations: Violation[] }> };
    };
    return (await axe.run()).violations;
  });
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id} ${JSON.stringify(target)} ${failureSummary}`),
  );
}

/** The narrow page as well, and every view, by `npm run views`. */
const WIDTHS = process.env['ENDURE'] === 'whole' ? [1440, 390] : [1440];

describe('axe on every view', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchChromium();
  });
  afterAll(() => browser.close());

  it.each(viewsInTurn.map((view) => [view.name, view] as const))(
    'finds nothing on %s',
    async (_, view) => {
      const page = await browser.newPage({
        bypassCSP: true,
        locale: 'en-US',
        reducedMotion: 'reduce',
        viewport: { width: 1440, height: 900 },
      });
      await openPage(page, inject('pageAddress'), view);
      for (const width of WIDTHS) {
        await page.setViewportSize({ width, height: 900 });
        for (const colorScheme of ['light', 'dark'] as const) {
          await page.emulateMedia({ colorScheme });
          expect(await faults(page), `${width} px, ${colorScheme}`).toEqual([]);
        }
      }
      await page.close();
    },
  );

  it('would find a fault', async () => {
    const page = await browser.newPage({ bypassCSP: true });
    await openPage(page, inject('pageAddress'), pageViews[0]!);
    await page.evaluate(() => {
      const faint = document.createElement('p');
      faint.textContent = 'hardly to be read';
      faint.style.setProperty('color', '#ddd');
      document.body.append(faint);
    });
    expect((await faults(page)).map((fault) => fault.split(' ')[0])).toContain('color-contrast');
    await page.close();
  });
});
