// A walk through every view by the Tab key: it comes to every control, in the order in which the page is
// read, and back again; the focus is always to be seen; and what has the focus is worked by its own keys.
// Fields and lists are the browser's own and are typed into by the tests that build a shop.
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchChromium } from '../setup/launch-chromium.ts';
import { openPage, pageViews, type PageView } from '../setup/page-views.ts';
import { viewsInTurn } from '../setup/views-in-turn.ts';
import { findStops, lookAtFocus, type Stop, type StopBox } from './focus-stops.ts';

/** Stops on one line may be so much apart in height [px]. */
const LINE = 12;
const PRESSED = new Set(['button', 'summary', 'checkbox']);
const SLID = new Set(['slider', 'range']);

describe('the walk by keys', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchChromium();
  });
  afterAll(() => browser.close());

  async function visit(view: PageView, width: number): Promise<Page> {
    const page = await browser.newPage({
      locale: 'en-US',
      reducedMotion: 'reduce',
      viewport: { width, height: 900 },
    });
    await openPage(page, inject('pageAddress'), view);
    // Parts out of sight follow when the gates have stood still for a while.
    await page.waitForTimeout(400);
    return page;
  }

  it.each(viewsInTurn.map((view) => [view.name, view] as const))(
    'comes to everything, in order and seen, there and back, and works it by its keys: %s',
    { timeout: 180_000 },
    async (_, view) => {
      const page = await visit(view, 1440);
      let stops = await findStops(page);
      expect(stops.length).toBeGreaterThan(3);
      expect(disorder(stops)).toEqual([]);

      const there = await walk(page, 'Tab', stops);
      expect(there.unseen).toEqual([]);
      expect(there.places).toEqual(stops.map(({ place }) => place));
      // From behind the last stop, back over all of them.
      const back = await walk(page, 'Shift+Tab', stops);
      expect(back.places).toEqual(stops.map(({ place }) => place).toReversed());

      await holdClicks(page);
      const idle: string[] = [];
      const { length } = stops;
      for (let place = 0; place < length; place++) {
        // What was moved and put back may have drawn what follows anew.
        if (!(await focus(page, stops[place]!))) {
          stops = await findStops(page);
          await focus(page, stops[place]!);
        }
        const stop = stops[place]!;
        if (!(await answersToKeys(page, stop))) idle.push(`${stop.role} ${stop.name}`);
      }
      expect(idle).toEqual([]);
      await page.close();
    },
  );

  it.each(['first', 'shops'])(
    'hides no focus on a phone, where the plot stays in view: %s',
    { timeout: 180_000 },
    async (name) => {
      const page = await visit(pageViews.find((view) => view.name === name)!, 390);
      const stops = await findStops(page);
      expect(disorder(stops)).toEqual([]);
      const { places, unseen } = await walk(page, 'Tab', stops);
      expect(unseen).toEqual([]);
      expect(places).toEqual(stops.map(({ place }) => place));
      await page.close();
    },
  );
});

/** Presses a key until the focus leaves the page. */
async function walk(page: Page, key: 'Tab' | 'Shift+Tab', stops: readonly Stop[]) {
  const places: number[] = [];
  const unseen: string[] = [];
  for (let presses = 0; presses <= stops.length; presses++) {
    await page.keyboard.press(key);
    const look = await lookAtFocus(page);
    // Past the last stop the browser may begin again.
    if (look.place === places[0] && places.length > 1) break;
    if (look.place === -1 && places.length === stops.length) break;
    places.push(look.place);
    if (look.place === -1) break;
    const stop = stops[look.place]!;
    const words = `${stop.role} ${stop.name}`;
    if (!look.isUncovered) unseen.push(`covered: ${words}`);
    if (!look.isOutlined && !(await isDrawnOtherwise(page, stop))) unseen.push(`no mark: ${words}`);
  }
  return { places, unseen };
}

/** Whether the page looks otherwise where the focus is than where it is not. */
async function isDrawnOtherwise(page: Page, { place }: Stop): Promise<boolean> {
  const focused = await page.screenshot();
  await page.evaluate((at) => {
    const stop = (globalThis as unknown as { stops: HTMLElement[] }).stops[at]!;
    stop.blur();
  }, place);
  const blurred = await page.screenshot();
  await page.evaluate((at) => {
    const stop = (globalThis as unknown as { stops: HTMLElement[] }).stops[at]!;
    stop.focus({ preventScroll: true });
  }, place);
  return !focused.equals(blurred);
}

/** Stops that lie before the one from which Tab leads to them, as lines are read. */
function disorder(stops: readonly Stop[]): string[] {
  return stops.slice(1).flatMap((stop, i) => {
    const from = stops[i]!;
    const isOneRegion =
      holds(from.regionBox, stop.regionBox) || holds(stop.regionBox, from.regionBox);
    const [a, b] = isOneRegion ? [from.box, stop.box] : [from.regionBox, stop.regionBox];
    const isAbove = isOneRegion ? b.bottom <= a.top + LINE : b.top < a.top - LINE;
    const isLeft = isOneRegion ? b.right <= a.left : b.left <= a.left;
    const isOnLine = Math.abs((a.top + a.bottom) / 2 - (b.top + b.bottom) / 2) < LINE;
    const isWrong = isOneRegion
      ? (isAbove && b.left < a.right) || (isOnLine && isLeft)
      : isAbove && isLeft;
    return isWrong ? [`${from.name} (${from.region}), then ${stop.name} (${stop.region})`] : [];
  });
}

function holds(outer: StopBox, inner: StopBox): boolean {
  return (
    outer.left <= inner.left &&
    outer.right >= inner.right &&
    outer.top <= inner.top &&
    outer.bottom >= inner.bottom
  );
}

/** Counts clicks, and lets none of them do anything. */
function holdClicks(page: Page): Promise<void> {
  return page.evaluate(() => {
    const counted = globalThis as unknown as { clicks: number };
    counted.clicks = 0;
    addEventListener(
      'click',
      (event) => {
        counted.clicks++;
        event.preventDefault();
        event.stopImmediatePropagation();
      },
      { capture: true },
    );
  });
}

/** Puts the focus there; whether the stop is still on the page. */
function focus(page: Page, { place }: Stop): Promise<boolean> {
  return page.evaluate((at) => {
    const stop = (globalThis as unknown as { stops: HTMLElement[] }).stops[at]!;
    stop.focus();
    return stop.isConnected;
  }, place);
}

async function answersToKeys(page: Page, stop: Stop): Promise<boolean> {
  if (PRESSED.has(stop.role)) {
    const before = await clicks(page);
    if (stop.role !== 'checkbox') await page.keyboard.press('Enter');
    await page.keyboard.press('Space');
    return (await clicks(page)) - before === (stop.role === 'checkbox' ? 1 : 2);
  }
  if (SLID.has(stop.role)) {
    const before = await sliderValue(page, stop);
    await page.keyboard.press('ArrowRight');
    const right = await sliderValue(page, stop);
    await page.keyboard.press('ArrowLeft');
    const left = await sliderValue(page, stop);
    await page.keyboard.press('ArrowLeft');
    const further = await sliderValue(page, stop);
    return right !== before || left !== right || further !== left;
  }
  if (stop.role === 'option') {
    await page.keyboard.press('ArrowLeft');
    const left = (await lookAtFocus(page)).place;
    await focus(page, stop);
    await page.keyboard.press('ArrowRight');
    return left !== stop.place || (await lookAtFocus(page)).place !== stop.place;
  }
  return true;
}

function clicks(page: Page): Promise<number> {
  return page.evaluate(() => (globalThis as unknown as { clicks: number }).clicks);
}

async function sliderValue(page: Page, { place }: Stop): Promise<string> {
  return page.evaluate(async (at) => {
    const stop = (globalThis as unknown as { stops: HTMLElement[] }).stops[at]!;
    await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
    // What moves two ways, such as a point of a curve, has its other figure in words only.
    const said = `${stop.ariaValueNow ?? ''} ${stop.ariaValueText ?? ''}`;
    return stop instanceof HTMLInputElement ? stop.value : said;
  }, place);
}
