// A finger on the drawing of the run, on a screen as wide as a phone's: what is tapped is selected
// everywhere, the neighbour is not, and a second tap lets it go.
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchChromium } from '../setup/launch-chromium.ts';
import { openWhole } from '../setup/open-whole.ts';
import { demoShop } from '../unit/state/demo-shop.ts';

describe('a finger on the drawing', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchChromium();
  });
  afterAll(() => browser.close());

  async function visit(): Promise<Page> {
    const page = await browser.newPage({
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
      locale: 'en-US',
      reducedMotion: 'reduce',
    });
    await openWhole(page, inject('pageAddress'));
    await page.getByRole('listbox', { name: /^Line drawing/ }).scrollIntoViewIfNeeded();
    return page;
  }

  const option = (page: Page, name: string) =>
    page.getByRole('option', { name: new RegExp(`^${name},`) });

  /** Taps the place that a finger would aim at: the written name. */
  async function tapName(page: Page, name: string): Promise<void> {
    const written = page.locator('dc-run-drawing text.drop', { hasText: name });
    await written.scrollIntoViewIfNeeded();
    const box = (await written.boundingBox())!;
    await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
  }

  const selected = async (page: Page) => {
    const options = await page.getByRole('option', { selected: true }).all();
    const names = await Promise.all(options.map((each) => each.getAttribute('aria-label')));
    return names.filter((name) => name !== null).map((name) => name.split(',')[0]);
  };

  it('selects every drop by its name, and no other', async () => {
    const page = await visit();
    for (const { name } of demoShop().drops) {
      await tapName(page, name);
      await expect.poll(() => selected(page)).toEqual([name]);
      await expect
        .poll(() => page.locator('dc-run-drawing .reading strong').textContent())
        .toBe(name);
    }
    await page.close();
  });

  it('selects it in the rest of the page too, and lets it go by a second tap', async () => {
    const page = await visit();
    await tapName(page, 'Jointer');
    const chooser = page.getByRole('combobox', { name: 'Drop' });
    await chooser.scrollIntoViewIfNeeded();
    await expect.poll(() => chooser.inputValue()).toBe('jointer');
    await tapName(page, 'Jointer');
    await expect.poll(() => selected(page)).toEqual([]);
    await expect.poll(() => chooser.inputValue()).toBe('');
    await page.close();
  });

  it('selects a duct that is tapped beside its line', async () => {
    const page = await visit();
    const duct = option(page, 'router table drop');
    await duct.scrollIntoViewIfNeeded();
    const box = (await duct.locator('path').boundingBox())!;
    // Its level stretch is the lowest part of this duct; a finger's breadth off its middle.
    await page.touchscreen.tap(box.x + 0.8 * box.width, box.y + box.height - 4);
    await expect.poll(() => selected(page)).toEqual(['router table drop']);
    await page.close();
  });
});
