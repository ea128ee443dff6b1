// The three decisions on the built page, by keys alone: from the demo through the answer to a variant
// that is kept beside the shop, compared with it and taken over; wide and narrow, in both unit systems.
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchChromium } from '../setup/launch-chromium.ts';
import { openWhole } from '../setup/open-whole.ts';
import { watchPage } from '../setup/watch-page.ts';
import { type Hands, keyboardHands } from './hands.ts';

const address = inject('pageAddress');

const SETTINGS = {
  'in inches at 1440 px': { width: 1440, locale: 'en-US', size: '7 in.' },
  'in millimetres at 390 px': { width: 390, locale: 'de-DE', size: '160 mm' },
} as const;

interface Question {
  readonly heading: string;
  /** Says what is asked beyond what stands there at first. */
  readonly ask: (hands: Hands) => Promise<void>;
  /** A figure or word that the answer's sentence holds. */
  readonly answer: RegExp;
  /** The row that is kept, as it is called. */
  readonly row: (setting: (typeof SETTINGS)[keyof typeof SETTINGS]) => string;
}

const QUESTIONS: readonly Question[] = [
  {
    heading: 'Can it reach further?',
    ask: async (hands) => {
      await hands.choose('Which drop is to reach further', 'Lathe');
      await hands.type('Length to add', '2.5 m');
    },
    answer: /^Lathe can reach .* wanted it gets [\d,\u202f]+\s(?:cfm|m³\/h)/,
    row: ({ width }) => `Lathe ${width === 390 ? '2.50 m' : `8' 2 7/16"`} further in 6 in. hose`,
  },
  {
    heading: 'Would a larger main help?',
    ask: async () => {},
    answer: /^A main of .* serves 11 of 12 drops, each alone/,
    row: ({ size }) => `main of ${size}`,
  },
  {
    heading: 'Which collector?',
    ask: async () => {},
    answer: /serve 11 of 12 drops, each alone/,
    row: () => 'collector: 3 hp cyclone, 14 in. wheel',
  },
];

describe('a decision, by keyboard', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchChromium();
  });
  afterAll(() => browser.close());

  /** What of the shop a decision changes, as text. */
  const builtOf = (page: Page) =>
    page.locator('dc-shop-page').evaluate((element: HTMLElementTagNameMap['dc-shop-page']) => {
      const { sections, drops, collector, name } = element.session!.shop.peek();
      return { built: JSON.stringify([sections, drops, collector]), name };
    });

  // `npm run views` asks both settings, `npm test` the narrower one.
  const settings = Object.entries(SETTINGS).slice(process.env['ENDURE'] === 'whole' ? 0 : 1);
  const cases = settings.flatMap(([words, setting]) =>
    QUESTIONS.map((question) => [question.heading, words, question, setting] as const),
  );
  // Some 10 s by itself; a busy machine may take several times as long.
  it.each(cases)('%s %s', { timeout: 120_000 }, async (_, __, question, setting) => {
    const context = await browser.newContext({
      viewport: { width: setting.width, height: 844 },
      locale: setting.locale,
      reducedMotion: 'reduce',
    });
    const page = await context.newPage();
    const complaints = await watchPage(page, address);
    await openWhole(page, address);
    const hands = keyboardHands(page);
    const before = await builtOf(page);

    await hands.unfold(question.heading);
    await question.ask(hands);
    await page.getByText(question.answer).first().waitFor();
    const row = question.row(setting);
    await hands.press(`Keep beside: ${row}`);
    await page.getByText(`Kept beside the shop: ${row};`).waitFor();
    expect(await builtOf(page)).toEqual(before);

    await hands.unfold('Variants');
    const compared = page.getByRole('table', { name: /^Each drop alone, in each variant/ });
    await compared.waitFor();
    const bought = compared.getByRole('row', { name: /^to be bought/ });
    expect(await bought.getByRole('cell').count()).toBe(2);
    await hands.press(`Make it so: ${before.name}: ${row}`);
    await expect.poll(() => builtOf(page)).not.toEqual(before);
    expect((await builtOf(page)).name).toBe(before.name);

    await hands.press('Undo');
    await expect.poll(() => builtOf(page)).toEqual(before);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(setting.width);
    expect(complaints).toEqual([]);
    await context.close();
  });
});
