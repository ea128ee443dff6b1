// The same shop from nothing by a finger, on a screen as wide as a phone's.
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchChromium } from '../setup/launch-chromium.ts';
import { openWhole } from '../setup/open-whole.ts';
import { saveAndCompare } from './against-command-line.ts';
import { buildShop } from './build-shop.ts';
import { touchHands } from './hands.ts';

describe('a shop built by touch', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchChromium();
  });
  afterAll(() => browser.close());

  // Some 15 s by itself; a busy machine may take several times as long.
  it('shows the figures of the command line, and fits a phone', { timeout: 180_000 }, async () => {
    const page = await browser.newPage({
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
      locale: 'en-US',
      reducedMotion: 'reduce',
    });
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(error.message));
    await openWhole(page, inject('pageAddress'));
    const hands = touchHands(page);
    await buildShop(hands);
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow).toBeLessThanOrEqual(0);

    await saveAndCompare(page, hands);
    expect(errors).toEqual([]);
    await page.close();
  });
});
