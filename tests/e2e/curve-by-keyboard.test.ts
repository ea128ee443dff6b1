// A collector's curve entered by keys alone on a phone's width, in metric units: typed, pasted, moved in
// the plot, one reading set aside, its meaning changed. The operating point follows each time.
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchChromium } from '../setup/launch-chromium.ts';
import { openWhole } from '../setup/open-whole.ts';
import { describeFocus, type Focus } from './describe-focus.ts';
import { keyboardHands } from './hands.ts';

const TABLE = 'Volumenstrom [m³/h];Unterdruck\n0;2.400\n900;2.250\n1.800;1.900\n2.700;1.150';
const MOST_STOPS = 400;

async function walkTo(page: Page, fits: (focus: Focus) => boolean): Promise<void> {
  for (let stop = 0; stop < MOST_STOPS; stop++) {
    if (fits(await describeFocus(page))) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('no way there by Tab');
}

/** The figures of the operating point, once they are others than before. */
async function movedOn(page: Page, before: string): Promise<string> {
  const line = page.getByText(/^The collector moves /).first();
  await expect.poll(async () => figures(await line.textContent())).not.toBe(before);
  return figures(await line.textContent());
}

function figures(words: string | null): string {
  return (
    /moves (.*?) for the ducts/.exec((words ?? '').replace(/ \(before, [^)]*\)/g, ''))?.[1] ?? ''
  );
}

describe('a curve entered by keyboard on a phone', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchChromium();
  });
  afterAll(() => browser.close());

  it('moves the operating point with every step', { timeout: 180_000 }, async () => {
    const page = await browser.newPage({
      viewport: { width: 390, height: 844 },
      locale: 'de-DE',
      reducedMotion: 'reduce',
    });
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(error.message));
    await openWhole(page, inject('pageAddress'));
    const hands = keyboardHands(page);
    await hands.unfold('Collector');
    await page.getByRole('slider', { name: 'Point 1 of the curve', exact: true }).waitFor();
    let now = await movedOn(page, '');
    expect(now).toMatch(/m³\/h and leaves .*Pa$/);

    await hands.type('Fan static pressure of point 4', '2900');
    now = await movedOn(page, now);

    await walkTo(page, ({ name }) => name === 'Paste or type a table as text');
    await page.keyboard.press('Enter');
    await walkTo(page, ({ role }) => role === 'textarea');
    await page.keyboard.insertText(TABLE);
    await hands.press('Read the points');
    // Nothing is said of the pressures' unit, so it is asked; the question stands before the field.
    await page.getByText(/^No unit is written for the pressures, 2400 to 1150/).waitFor();
    for (let stop = 0; (await describeFocus(page)).name !== 'Pa'; stop++) {
      if (stop === 20) throw new Error('no way back to the question');
      await page.keyboard.press('Shift+Tab');
    }
    await page.keyboard.press('Enter');
    now = await movedOn(page, now);
    await page.getByText(/^Understood: 4 points: flow in m³\/h, pressure in Pa/).waitFor();

    const mark = page.getByRole('slider', { name: 'Point 3 of the curve', exact: true });
    await expect.poll(() => mark.getAttribute('aria-valuetext')).toMatch(/^1.800.m³\/h, 1.900.Pa$/);
    for (let stop = 0; (await describeFocus(page)).name !== 'Point 3 of the curve'; stop++) {
      if (stop === 60) throw new Error('no way back to the plot');
      await page.keyboard.press('Shift+Tab');
    }
    await page.keyboard.press('Shift+ArrowDown');
    await page.keyboard.press('ArrowRight');
    now = await movedOn(page, now);

    await walkTo(page, ({ role, name }) => role === 'checkbox' && name === 'Use point 2');
    await page.keyboard.press('Space');
    now = await movedOn(page, now);

    await walkTo(page, ({ role }) => role === 'radio');
    await page.keyboard.press('ArrowDown');
    await movedOn(page, now);
    await page.getByText(/would promise .* too much\.$/).waitFor();

    const widest = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(widest).toBeLessThanOrEqual(390);
    expect(errors).toEqual([]);
    await page.close();
  });
});
