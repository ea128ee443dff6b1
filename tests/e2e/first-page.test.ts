// The built page in Chromium: a gate is drawn by keys, and what the page then says is what the core
// says of the same state. Nothing is logged, refused by the policy, or asked of another origin.
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { travelsWhenOpen } from '../../src/shop/gate-state.ts';
import { sentence } from '../../src/shop/sentence.ts';
import { modelOf } from '../../src/shop/shop-model.ts';
import { stateReport } from '../../src/shop/state-report.ts';
import { formatQuantity } from '../../src/units/format.ts';
import { launchChromium } from '../setup/launch-chromium.ts';
import { openWhole, resizeWhole } from '../setup/open-whole.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { sidewaysScroll } from './text-faults.ts';

const address = inject('pageAddress');
const shop = demoShop();

/** What the core says of the demo with these drops open. */
function solved(open: readonly string[]) {
  const report = stateReport(modelOf(shop), travelsWhenOpen(shop.drops, open));
  const drop = (id: string) => report.drops.find((each) => each.id === id)!;
  return {
    flow: formatQuantity('flow', 'us', report.operatingPoint!.flow),
    suction: formatQuantity('pressure', 'us', report.operatingPoint!.suction),
    speed: (id: string) => formatQuantity('velocity', 'us', drop(id).velocity),
    sentence: sentence(shop, report, 'us'),
  };
}

interface Visit {
  readonly page: Page;
  /** Console messages, errors, violations of the policy and requests to elsewhere. */
  readonly complaints: string[];
}

describe('the first page', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchChromium();
  });
  afterAll(() => browser.close());

  async function visit(options: BrowserContextOptions = {}): Promise<Visit> {
    const context = await browser.newContext({
      viewport: { width: 1440, height: 900 },
      locale: 'en-US',
      ...options,
    });
    const page = await context.newPage();
    const complaints: string[] = [];
    page.on('console', (message) => complaints.push(`${message.type()}: ${message.text()}`));
    page.on('pageerror', (error) => complaints.push(error.message));
    page.on('request', (request) => {
      const url = request.url();
      if (!url.startsWith(address) && !url.startsWith('data:')) complaints.push(`asked ${url}`);
    });
    await openWhole(page, address);
    return { page, complaints };
  }

  const said = async (page: Page) => {
    const words = await page.getByRole('main').locator('p').first().textContent();
    return words?.replaceAll('\u202f', '\u2009');
  };

  it('opens on the demo, solved, as the core solves it', async () => {
    const { page, complaints } = await visit();
    const core = solved(shop.gateSets[0]!.open);
    expect(await said(page)).toBe(core.sentence);
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe(shop.name);
    expect(await page.locator('text.flow-number').textContent()).toContain(core.flow.number);
    expect(await page.locator('text.suction-number').textContent()).toContain(core.suction.number);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it('opens a gate by keyboard and tells the new point, speed and sentence', async () => {
    const { page, complaints } = await visit();
    const before = await said(page);
    const gate = page.getByRole('slider', { name: 'Gate, Floor sweep' });
    for (
      let presses = 0;
      presses < 60 && !(await isFocused(page, 'Gate, Floor sweep'));
      presses++
    ) {
      await page.keyboard.press('Tab');
    }
    await page.keyboard.press('End');
    await expect.poll(() => gate.getAttribute('aria-valuetext')).toBe('fully open');

    const core = solved([...shop.gateSets[0]!.open, 'floor-sweep']);
    await expect.poll(() => said(page)).toBe(core.sentence);
    expect(core.sentence).not.toBe(before);
    await expect
      .poll(() => page.locator('text.flow-number').textContent())
      .toBe(`${core.flow.number} ${core.flow.unit}`);
    const scale = page.getByRole('img', { name: /^Floor sweep: / });
    expect(await scale.getAttribute('aria-label')).toContain(core.speed('floor-sweep').text);
    await expect.poll(() => page.getByRole('status').textContent()).toBe(core.sentence);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it('moves the gate with a finger too', async () => {
    const { page } = await visit({ viewport: { width: 390, height: 844 }, hasTouch: true });
    const gate = page.getByRole('slider', { name: 'Gate, Thickness planer' });
    await gate.scrollIntoViewIfNeeded();
    const box = (await gate.boundingBox())!;
    const client = await page.context().newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', x?: number) =>
      client.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: x === undefined ? [] : [{ x, y: box.y + 22 }],
      });
    await touch('touchStart', box.x + 68);
    for (let moved = 3; moved <= 18; moved += 3) await touch('touchMove', box.x + 68 + moved);
    await touch('touchEnd');
    await expect.poll(() => gate.getAttribute('aria-valuetext')).toBe('half open');
    await page.context().close();
  });

  it('keeps the axes where they are while a gate moves', async () => {
    const { page } = await visit();
    const ticks = () => page.locator('text.tick-x, text.tick-y').allTextContents();
    const before = await ticks();
    await page.getByRole('button', { name: 'Only Blade guard', exact: true }).click();
    await expect.poll(() => said(page)).toMatch(/^Blade guard open/);
    expect(await ticks()).toEqual(before);
    await page.context().close();
  });

  it('jumps instead of sliding where motion is unwanted', async () => {
    const { page } = await visit({ reducedMotion: 'reduce' });
    const travels = await page.evaluate(async () => {
      const seen = new Set<string>();
      const deep = (root: ParentNode): Element[] =>
        [...root.querySelectorAll('*')].flatMap((each) =>
          each.shadowRoot ? [each, ...deep(each.shadowRoot)] : [each],
        );
      const find = (label: string) =>
        deep(document).find((each) => each.getAttribute('aria-label') === label) as HTMLElement;
      find('Open Lathe').click();
      for (let frame = 0; frame < 30; frame++) {
        await new Promise((resolve) => requestAnimationFrame(resolve));
        seen.add(find('Gate, Lathe').getAttribute('aria-valuenow') ?? '');
      }
      return [...seen];
    });
    expect(travels.filter((travel) => travel !== '0' && travel !== '100')).toEqual([]);
    await page.context().close();
  });

  it('scrolls in one direction only, however wide the window', async () => {
    const { page } = await visit();
    for (const width of [1440, 820, 390, 320]) {
      await resizeWhole(page, width);
      expect(await sidewaysScroll(page), `${width} px`).toBeLessThanOrEqual(0);
    }
    await page.context().close();
  });
});

/** Whether the focus, through all shadow roots, is on the element with this label. */
function isFocused(page: Page, label: string): Promise<boolean> {
  return page.evaluate((wanted) => {
    let focused = document.activeElement;
    while (focused?.shadowRoot?.activeElement) focused = focused.shadowRoot.activeElement;
    return focused?.getAttribute('aria-label') === wanted;
  }, label);
}
