// How fast the page's processor is: the time that it takes for the same arithmetic. All times of the
// benchmark are of one machine at one time, and this is the yardstick to compare them by.

import type { Page } from 'playwright-core';
import { slowEvenly } from './slow-evenly.ts';

/** How near the wanted slowness has to be, as a part of it. */
const NEAR = 0.02;
const MOST_TRIES = 10;

/** The median time for the same arithmetic, done once a frame [ms]. */
export async function yardstick(page: Page): Promise<number> {
  const times = await page.evaluate(async () => {
    const taken: number[] = [];
    let sum = 0;
    for (let turn = 0; turn < 100; turn++) {
      await new Promise((resolve) => requestAnimationFrame(resolve));
      const begin = performance.now();
      for (let i = 0; i < 120_000; i++) sum += Math.sqrt(i + (sum % 3));
      taken.push(performance.now() - begin);
    }
    return taken;
  });
  return times.toSorted((a, b) => a - b)[times.length / 2] ?? Number.NaN;
}

/** A rate to hand to Chromium, and how many times slower it was seen to make the page. */
export interface Slowness {
  readonly rate: number;
  readonly times: number;
}

/**
 * The rate at which Chromium makes the page's processor slower by a number of times. It isn't that
 * number: what the stopping and going on costs comes on top of it, by a fifth to a half here.
 *
 * @param page - any
 * @param times - how many times longer the same arithmetic is to take
 */
export async function slowness(page: Page, times: number): Promise<Slowness> {
  const client = await page.context().newCDPSession(page);
  const unslowed = await yardstick(page);
  let found: Slowness = { rate: times, times: Number.NaN };
  for (let attempt = 0; attempt < MOST_TRIES; attempt++) {
    await slowEvenly(client, found.rate);
    found = { ...found, times: (await yardstick(page)) / unslowed };
    await slowEvenly(client, 1);
    if (Math.abs(found.times / times - 1) <= NEAR || attempt === MOST_TRIES - 1) break;
    found = { ...found, rate: 1 + ((found.rate - 1) * (times - 1)) / (found.times - 1) };
  }
  await client.detach();
  return found;
}
