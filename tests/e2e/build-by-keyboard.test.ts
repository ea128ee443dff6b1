// A shop from nothing, by keys alone: no pointer is ever used. What the page then shows is what the
// command line says of the file that the page saved.
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchChromium } from '../setup/launch-chromium.ts';
import { expectBuilt, expectPageToSay, takeSaved } from './against-command-line.ts';
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
    await page.goto(inject('pageAddress'), { waitUntil: 'networkidle' });
    const hands = keyboardHands(page);
    await buildShop(hands);

    await hands.press('Shops');
    const saving = page.waitForEvent('download');
    await hands.press('Save as a file: Boat shed');
    const saved = await takeSaved(await saving);
    expectBuilt(saved.shop);
    await hands.press('Back to Boat shed');

    await hands.press('Only Planer');
    await expectPageToSay(page, saved.shop, saved.report(['Planer']));
    await hands.press('Open Lathe');
    await expectPageToSay(page, saved.shop, saved.report(['Planer', 'Lathe']));
    expect(errors).toEqual([]);
    saved.discard();
    await page.close();
  });
});
