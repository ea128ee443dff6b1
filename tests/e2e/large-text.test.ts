// Text at twice its size loses nothing on any view: neither where the reader has a browser write twice as
// large, nor where the whole page is magnified twice, which leaves it half as wide.
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchChromium } from '../setup/launch-chromium.ts';
import { resizeWhole } from '../setup/open-whole.ts';
import { openPage, pageView } from '../setup/page-views.ts';
import { viewsInTurn } from '../setup/views-in-turn.ts';
import { sidewaysScroll, textFaults } from './text-faults.ts';

const USUAL_TEXT = 16;

describe.each([
  { words: 'text of twice the size', text: 2 * USUAL_TEXT, widths: [1440, 820] },
  // As wide as a desk's window magnified twice, and a phone.
  { words: 'text of its usual size', text: USUAL_TEXT, widths: [720, 390] },
])('with $words', ({ text, widths }) => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchChromium([`--blink-settings=defaultFontSize=${text}`]);
  });
  afterAll(() => browser.close());

  const open = async (name: string) => {
    const page = await browser.newPage({
      locale: 'en-US',
      reducedMotion: 'reduce',
      viewport: { width: widths[0]!, height: 900 },
    });
    await openPage(page, inject('pageAddress'), pageView(name));
    return page;
  };

  it.each(viewsInTurn.map(({ name }) => name))('loses nothing on %s', async (name) => {
    const page = await open(name);
    for (const width of widths) {
      await resizeWhole(page, width);
      await page.evaluate(() => scrollTo(0, 0));
      expect(await sidewaysScroll(page), `${width} px`).toBeLessThanOrEqual(0);
      expect(await textFaults(page), `${width} px`).toEqual([]);
    }
    await page.close();
  });

  it('would see what is lost', async () => {
    const page = await open('first');
    await page.evaluate(() => {
      const put = (words: string, style: Readonly<Record<string, string>>) => {
        const lost = document.createElement('p');
        lost.textContent = words;
        for (const [name, value] of Object.entries(style)) lost.style.setProperty(name, value);
        document.body.append(lost);
      };
      put('cut off', { 'block-size': '4px', overflow: 'hidden' });
      put('too long '.repeat(40), { 'white-space': 'nowrap' });
      put('under', { margin: '0' });
      put('over', { margin: '-1lh 0 0' });
    });
    const kinds = (await textFaults(page)).map((fault) => fault.split(':')[0]);
    expect(kinds).toContain('cut above or below');
    expect(kinds).toContain('out of the window');
    expect(kinds).toContain('one over the other');
    expect(await sidewaysScroll(page)).toBeGreaterThan(0);
    await page.close();
  });

  it('writes the words in figures as large as all others', async () => {
    const page = await open('first');
    const sizes = await page.evaluate(() => {
      const deep = (root: ParentNode): Element[] =>
        [...root.querySelectorAll('*')].flatMap((each) =>
          each.shadowRoot ? [each, ...deep(each.shadowRoot)] : [each],
        );
      return deep(document).flatMap((each) => {
        if (!(each instanceof SVGTextElement) || each.textContent === '') return [];
        const scale = each.getScreenCTM()?.a ?? 0;
        return [scale * Number.parseFloat(getComputedStyle(each).fontSize)];
      });
    });
    expect(sizes.length).toBeGreaterThan(20);
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual((12 / USUAL_TEXT) * text - 0.01);
    await page.close();
  });
});
