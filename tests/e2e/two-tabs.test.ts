// Two tabs of the built page on one shop, edited at random without waiting for one another. At the end
// both show the same, the browser holds the same, and whatever was edited last is there, unless the
// reader was told that it was set aside. `npm run endure` takes twenty times as many steps.
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import type { Shop } from '../../src/shop/schema/shop-schema.ts';
import { launchChromium } from '../setup/launch-chromium.ts';
import { say } from '../setup/say.ts';
import { seededChance } from '../setup/seeded-chance.ts';

const address = inject('pageAddress');
const STEPS = process.env['ENDURE'] === 'whole' ? 1000 : 50;
type Desk = HTMLElementTagNameMap['dc-shop-desk'];

describe('two tabs on one shop', () => {
  let browser: Browser;
  let context: BrowserContext;
  beforeAll(async () => {
    browser = await launchChromium();
    context = await browser.newContext({ locale: 'en-US' });
  });
  afterAll(() => browser.close());

  async function open(): Promise<Page> {
    const page = await context.newPage();
    await page.goto(address);
    await page.getByRole('slider').first().waitFor();
    return page;
  }
  const desk = (page: Page) => page.locator('dc-shop-desk');
  const edit = (page: Page, section: number, length: number) =>
    desk(page).evaluate(
      (found: Desk, [section, length]) =>
        found.shelf?.open.value.session.edit((shop) => ({
          ...shop,
          sections: shop.sections.map((each, i) => (i === section ? { ...each, length } : each)),
        })),
      [section, length] as const,
    );
  const notice = (page: Page) =>
    desk(page).evaluate((found: Desk) => found.shelf?.notice.value?.text ?? '');
  const lengths = (page: Page) =>
    desk(page).evaluate((found: Desk) =>
      found.shelf?.open.value.session.shop.value.sections.map(({ length }) => length),
    );
  const versions = (page: Page) =>
    desk(page).evaluate(async (found: Desk) => {
      const { shelf } = found;
      const all = (await shelf?.versions(shelf.open.value.id)) ?? [];
      return all.map(({ document }) => (document as Shop).sections.map(({ length }) => length));
    });

  /** Until both show the same and nothing is under way any more. */
  async function settle(pages: readonly Page[]): Promise<void> {
    const state = async () => JSON.stringify(await Promise.all(pages.map(lengths)));
    await expect
      .poll(
        async () => {
          const before = await state();
          await pages[0]?.waitForTimeout(300);
          const shown: unknown[] = JSON.parse(before) as unknown[];
          const isAlike = shown.every((each) => JSON.stringify(each) === JSON.stringify(shown[0]));
          return isAlike && before === (await state());
        },
        { timeout: 15_000 },
      )
      .toBe(true);
  }

  it(`loses nothing untold in ${STEPS} random steps`, {
    timeout: 60_000 + 200 * STEPS,
  }, async () => {
    const first = await open();
    await edit(first, 0, 1);
    await desk(first).evaluate((found: Desk) => found.shelf?.idle());
    const pages = [first, await open()] as const;
    await settle(pages);
    const seed = Date.now();
    const chance = seededChance(seed);
    const expected = new Map<number, number>();
    let told = 0;

    /** What was told of lies among the versions, and all must hold again from here on. */
    const account = async () => {
      await settle(pages);
      const texts = await Promise.all(pages.map(notice));
      const now = (await lengths(first)) ?? [];
      const isTold = texts.some((text) => /two tabs at once/.test(text));
      const aside = isTold ? await versions(first) : [];
      for (const [section, length] of expected) {
        const isThere = now[section] === length || aside.some((each) => each[section] === length);
        expect(isThere, `section ${section}, length ${length}, seed ${seed}`).toBe(true);
        expected.set(section, now[section] ?? 0);
      }
      if (isTold) told += 1;
      for (const page of pages) {
        await desk(page).evaluate((found: Desk) => found.shelf?.dismiss());
      }
    };

    for (let step = 1; step <= STEPS; step++) {
      const page = pages[chance() < 0.5 ? 0 : 1];
      const section = Math.floor(chance() * 6);
      const length = 1 + step / 1000;
      const edits = [edit(page, section, length)];
      expected.set(section, length);
      if (chance() < 0.2) {
        // Now and then both are edited in the same instant.
        const beside = (section + 3) % 6;
        edits.push(edit(pages[page === first ? 1 : 0], beside, length));
        expected.set(beside, length);
      }
      await Promise.all(edits);
      await page.waitForTimeout(chance() * 25);
      if (step % 10 === 0) await account();
    }
    await account();
    const [one, other] = await Promise.all(pages.map(lengths));
    expect(one).toEqual(other);
    const third = await open();
    expect(await lengths(third)).toEqual(one);
    say(`two tabs: ${STEPS} steps, nothing lost; told of edits set aside ${told} times`);
    await Promise.all([...pages, third].map((page) => page.close()));
  });

  it('goes on in the second tab after the first has crashed, without asking', async () => {
    const first = await open();
    await edit(first, 1, 2.5);
    const second = await open();
    await edit(first, 2, 3.5);
    await settle([first, second]);
    const client = await context.newCDPSession(first);
    const crashed = first.waitForEvent('crash');
    client.send('Page.crash').catch(() => {}); // nobody is left to answer
    await crashed;
    await edit(second, 3, 4.5);
    await desk(second).evaluate((found: Desk) => found.shelf?.idle());
    expect(await notice(second)).toBe('');
    await second.reload();
    await second.getByRole('slider').first().waitFor();
    expect((await lengths(second))?.slice(1, 4)).toEqual([2.5, 3.5, 4.5]);
    await second.close();
  });
});
