// The page is closed, loaded again, crashed, and killed with its whole browser, at random moments in
// the midst of edits. No edit that the database acknowledged is missing afterwards; after a close or a
// reload, which let the page flush, no edit at all. `npm run endure` does it some twenty times as often.
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { beginEditing, type EditCount, editShown, openBusyPage } from '../setup/busy-page.ts';
import { ProfileBrowser } from '../setup/profile-browser.ts';
import { say } from '../setup/say.ts';
import { seededChance } from '../setup/seeded-chance.ts';

const address = inject('pageAddress');
const isWhole = process.env['ENDURE'] === 'whole';
const TIMES = isWhole ? { ends: 200, kills: 50 } : { ends: 9, kills: 2 };
/** How long edits go on before an end, at most [ms]. */
const LONGEST = 150;

const ENDS = {
  close: (page: Page) => page.close(),
  reload: (page: Page) => page.reload(),
  crash: async (page: Page) => {
    const crashed = page.waitForEvent('crash');
    const client = await page.context().newCDPSession(page);
    client.send('Page.crash').catch(() => {}); // nobody is left to answer
    await crashed;
    await page.close();
  },
} as const;
const KINDS = Object.keys(ENDS) as (keyof typeof ENDS)[];

describe('edits endure', () => {
  const browser = new ProfileBrowser();
  const chance = seededChance(Date.now());
  const count: EditCount = { made: 0, kept: 0 };
  let context: BrowserContext;
  let page: Page;
  beforeAll(async () => {
    context = await browser.start();
    page = await openBusyPage(context, address, count);
  });
  afterAll(() => browser.end());

  /** Edits for a while, ends it, opens the page again and gives the edit that it shows then. */
  async function endure(end: (page: Page) => Promise<unknown>): Promise<number> {
    if (page.isClosed()) page = await openBusyPage(context, address, count);
    const begun = count.made;
    await beginEditing(page, begun + 1);
    await page.waitForTimeout(chance() * LONGEST);
    await end(page);
    if (page.isClosed()) page = await openBusyPage(context, address, count);
    await page.getByRole('slider').first().waitFor();
    expect(count.made).toBeGreaterThan(begun);
    return editShown(page);
  }

  it(`${TIMES.ends} closes, reloads and crashes`, {
    timeout: 20_000 + 4000 * TIMES.ends,
  }, async () => {
    let unacknowledged = 0;
    for (let time = 0; time < TIMES.ends; time++) {
      const kind = KINDS[time % KINDS.length]!;
      const shown = await endure(ENDS[kind]);
      expect(shown, `${kind}, ${time + 1}. time`).toBeGreaterThanOrEqual(count.kept);
      if (kind !== 'crash') {
        expect(shown, `${kind}, ${time + 1}. time`).toBeGreaterThanOrEqual(count.made);
      }
      unacknowledged += Math.max(0, count.made - shown);
      count.made = Math.max(count.made, shown);
      count.kept = Math.max(count.kept, shown);
    }
    say(
      `endured ${TIMES.ends} ends: ${count.made} edits, none acknowledged is missing; ${unacknowledged} made in the last instant before a crash are`,
    );
  });

  it(`${TIMES.kills} kills of the whole browser`, {
    timeout: 20_000 + 8000 * TIMES.kills,
  }, async () => {
    for (let time = 0; time < TIMES.kills; time++) {
      const shown = await endure(async () => {
        await browser.kill();
        context = await browser.start();
      });
      expect(shown, `${time + 1}. kill`).toBeGreaterThanOrEqual(count.kept);
      count.made = Math.max(count.made, shown);
      count.kept = Math.max(count.kept, shown);
    }
    say(`endured ${TIMES.kills} kills: none acknowledged is missing`);
  });
});
