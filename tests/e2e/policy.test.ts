// The content policy, enforced as a host would enforce it: every part of the built page is used and
// nothing is refused, logged, or asked of another origin. What the policy is there for is refused.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { policyHeaders } from '../../src/app/build/policy-headers.ts';
import { launchChromium } from '../setup/launch-chromium.ts';
import { unfoldAll } from '../setup/unfold-all.ts';
import { watchPage } from '../setup/watch-page.ts';

const address = inject('pageAddress');

// What is tried, the rule that refuses it, and how it is tried: as texts, since lint forbids it. The
// debugger alone may run a text.
const ATTEMPTS = [
  [
    'a script in the page',
    'require-trusted-types-for trusted-types-sink',
    `const script = document.createElement('script');
       script.src = 'data:text/javascript,globalThis.ran=true';
       document.body.append(script)`,
  ],
  [
    'markup from text',
    'require-trusted-types-for trusted-types-sink',
    `document.body.innerHTML = '<img src=x onerror=globalThis.ran=true>'`,
  ],
  [
    'a request to elsewhere',
    'connect-src https://elsewhere.invalid/',
    `fetch('https://elsewhere.invalid/').catch(() => {})`,
  ],
  [
    'a picture from elsewhere',
    'img-src https://elsewhere.invalid/a.png',
    `new Image().src = 'https://elsewhere.invalid/a.png'`,
  ],
  [
    'a style in the page',
    'style-src-attr inline',
    `document.body.setAttribute('style', 'color: red')`,
  ],
] as const;

describe('the content policy', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchChromium();
  });
  afterAll(() => browser.close());

  async function visit(): Promise<{ page: Page; complaints: string[] }> {
    const context = await browser.newContext({ locale: 'en-US', acceptDownloads: true });
    const page = await context.newPage();
    const complaints = await watchPage(page, address);
    await page.goto(address);
    await page.getByRole('slider').first().waitFor();
    return { page, complaints };
  }
  const press = (page: Page, name: string) =>
    page.getByRole('button', { name, exact: true }).first().click();

  it('comes as a header and in the page itself, alike but for what a service worker needs', async () => {
    const { page } = await visit();
    const inPage = await page
      .locator('meta[http-equiv="Content-Security-Policy"]')
      .getAttribute('content');
    const response = await page.request.get(address);
    const header = response.headers()['content-security-policy'] ?? '';
    expect(header).toBe(policyHeaders()['Content-Security-Policy']);
    const rules = (policy: string) => policy.split(';').map((rule) => rule.trim());
    const differing = (one: string[], other: string[]) =>
      one.filter((rule) => !other.includes(rule));
    expect(differing(rules(header), rules(inPage ?? ''))).toEqual([
      "connect-src 'self'",
      "frame-ancestors 'none'",
    ]);
    expect(differing(rules(inPage ?? ''), rules(header))).toEqual(["connect-src 'none'"]);
    await page.context().close();
  });

  it('has nothing to refuse in any worker: no script of the page can ask for anything', () => {
    const folder = join(inject('pageFolder'), 'assets');
    const scripts = readdirSync(folder).filter((name) => name.endsWith('.js'));
    expect(scripts.length).toBeGreaterThan(10);
    const calls = /\bfetch\(|XMLHttpRequest|WebSocket|EventSource|sendBeacon|importScripts|WebRTC/;
    const asking = scripts.filter((name) => calls.test(readFileSync(join(folder, name), 'utf8')));
    expect(asking).toEqual([]);
  });

  it('lets every part of the page work', async () => {
    const { page, complaints } = await visit();
    await unfoldAll(page);
    await page.getByRole('radio', { name: 'metric' }).check();
    await press(page, 'Only Lathe');
    for (const name of await page
      .getByRole('button', { name: /^Save the .* as (SVG|PNG)$/ })
      .all()) {
      await Promise.all([page.waitForEvent('download'), name.click()]);
    }
    await page.getByRole('slider', { name: 'How blind the filter is' }).press('ArrowRight');
    await press(page, 'Undo');
    const table = page.getByRole('table').first();
    await table.waitFor();
    await press(page, 'Shops');
    await page.getByRole('heading', { level: 1, name: 'Shops' }).waitFor();
    await press(page, 'Start my own');
    await press(page, 'Open the shop');
    await page.getByRole('slider').first().waitFor();
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it('refuses what is not the page, and the watch sees it', async () => {
    const { page, complaints } = await visit();
    for (const [what, rule, attempt] of ATTEMPTS) {
      complaints.length = 0;
      await page.evaluate(`try { ${attempt} } catch {}`);
      // By the header and by the page itself: both are awaited, so that none is taken for the next one's.
      const refused = () => complaints.filter((each) => each === `violation: ${rule}`);
      await expect.poll(() => refused().length, { message: what }).toBe(2);
    }
    expect(await page.evaluate('globalThis.ran')).toBeUndefined();
    await page.context().close();
  });
});
