// What the first load of the built page weighs, and that it asks nobody else for anything.
import { gzipSync } from 'node:zlib';
import type { Browser, Response } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launchChromium } from '../setup/launch-chromium.ts';
import { say } from '../setup/say.ts';

const address = inject('pageAddress');
/** Compressed, in bytes: 140 kB of JavaScript and 20 kB of CSS. */
const MOST = { script: 140_000, stylesheet: 20_000 } as const;

/** Everything that is asked for until the page has come to rest, by kind and compressed size. */
async function firstLoad(browser: Browser) {
  const page = await browser.newPage();
  const responses: Response[] = [];
  page.on('response', (response) => responses.push(response));
  await page.goto(address, { waitUntil: 'networkidle' });
  await page.getByRole('slider').first().waitFor();
  await page.waitForLoadState('networkidle');
  const loaded = await Promise.all(
    responses.map(async (response) => ({
      url: response.url(),
      kind: response.request().resourceType(),
      size: response.url().startsWith('data:') ? 0 : gzipSync(await response.body()).length,
    })),
  );
  await page.close();
  return loaded;
}

describe('the first load', () => {
  let browser: Browser;
  let loaded: Awaited<ReturnType<typeof firstLoad>>;
  beforeAll(async () => {
    browser = await launchChromium();
    loaded = await firstLoad(browser);
  });
  afterAll(() => browser.close());

  it.each(['script', 'stylesheet'] as const)('keeps within its weight: %s', (kind) => {
    const sizes = loaded.filter((each) => each.kind === kind).map(({ size }) => size);
    expect(sizes.length).toBeGreaterThan(0);
    const total = sizes.reduce((sum, size) => sum + size, 0);
    say(`first load, ${kind}: ${total} of ${MOST[kind]} bytes`);
    expect(total).toBeLessThanOrEqual(MOST[kind]);
  });

  it('asks nobody but its own origin', () => {
    const elsewhere = loaded.filter(
      ({ url }) => !url.startsWith(address) && !url.startsWith('data:'),
    );
    expect(elsewhere).toEqual([]);
  });

  it('leaves the editors for when they are wanted', () => {
    const names = loaded.map(({ url }) => url).join(' ');
    expect(names).not.toMatch(/run-editor|collector-panel|conditions-panel|shop-list|start-shop/);
  });
});
