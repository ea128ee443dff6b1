// A shop from nothing, by keys alone: no pointer is ever used. What the page then shows is what the
// command line says of the file that the page saved.
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchChromium } from '../setup/launch-chromium.ts';
import { openWhole } from '../setup/open-whole.ts';
import { saveAndCompare } from './against-command-line.ts';
import { buildShop } from './build-shop.ts';
import { keyboardHands } from './hands.ts';

describe('a shop built by keyboard', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchChromium();
  });
  afterAll(() => browser.close());

  // Some 20 s by itself; a busy machine may take several times as long.
  it('shows the figures of the command line', { timeout: 180_000 }, async () => {
    const page = await browser.newPage({
      viewport: { width: 1440, height: 900 },
      locale: 'en-US',
      reducedMotion: 'reduce',
    });
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(error.message));
    await openWhole(page, inject('pageAddress'));
    const hands = keyboardHands(page);
    await buildShop(hands);

    await saveAndCompare(page, hands);
    expect(errors).toEqual([]);
    await page.close();
  });
});
