// Drags a gate of the built page by the mouse, in step with the screen, and records what the page
// does meanwhile.

import type { CDPSession, Page } from 'playwright-core';
import type { Shop } from '../../src/shop/schema/shop-schema.ts';
import type { CpuProfile } from './profile-rooms.ts';
import { type FrameWork, frameWork, type TraceEvent } from './trace-frames.ts';

const CATEGORIES = ['devtools.timeline'];
/** One move a frame [ms]. */
const PACE = 1000 / 60;
/** How far the blade is drawn each way [px], and in how many moves. */
const REACH = 36;
const MOVES = 60;
/** Moves that are not counted, until the code is warm. */
const WARM_UP = 120;

/** What was recorded while a gate was dragged. */
export interface DragRecord {
  readonly frames: readonly FrameWork[];
  readonly profile: CpuProfile | undefined;
}

/** Puts another shop on the page, the given drops open. */
export async function showShop(page: Page, shop: Shop, open: readonly string[]): Promise<void> {
  const found = page.locator('dc-shop-page');
  await found.evaluate(
    (element: HTMLElementTagNameMap['dc-shop-page'], [shop, open]) => {
      const { session } = element;
      if (!session) throw new Error('the page has no session');
      const SessionOfPage = session.constructor as new (...parts: unknown[]) => typeof session;
      element.session = new SessionOfPage(shop, open, 'us');
    },
    [shop, open] as const,
  );
  await page.waitForTimeout(300);
}

/**
 * Drags the gate of a drop to and fro, from open to shut and back.
 *
 * @param page - showing the shop
 * @param drop - name of the drop
 * @param moves - how many moves of the mouse are recorded, one a frame
 * @param slowdown - how many times slower the processor is made
 * @param watch - 'time' for frames alone, 'profile' to see what the time went to as well
 */
export async function dragGate(
  page: Page,
  drop: string,
  moves: number,
  slowdown: number,
  watch: 'time' | 'profile',
): Promise<DragRecord> {
  const browser = page.context().browser();
  if (!browser) throw new Error('only a browser of its own can be traced');
  const client = await page.context().newCDPSession(page);
  const gate = page.getByRole('slider', { name: `Gate, ${drop}`, exact: true });
  await gate.scrollIntoViewIfNeeded();
  await gate.press('End');
  await page.waitForTimeout(300);
  const box = await gate.boundingBox();
  if (!box) throw new Error(`the gate of ${drop} is not to be seen`);
  const [x, y] = [box.x + 40, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await client.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  await drag(client, x, y, WARM_UP);
  await browser.startTracing(page, { categories: CATEGORIES });
  if (watch === 'profile') {
    await client.send('Profiler.enable');
    await client.send('Profiler.setSamplingInterval', { interval: 100 });
    await client.send('Profiler.start');
  }
  await drag(client, x, y, moves);
  const profile =
    watch === 'profile' ? ((await client.send('Profiler.stop')).profile as CpuProfile) : undefined;
  const trace = JSON.parse(String(await browser.stopTracing())) as { traceEvents: TraceEvent[] };
  await client.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  await page.mouse.up();
  await client.detach();
  return { frames: frameWork(trace.traceEvents), profile };
}

async function drag(client: CDPSession, x: number, y: number, moves: number): Promise<void> {
  const begin = performance.now();
  for (let move = 0; move < moves; move++) {
    const turn = (move % (2 * MOVES)) / MOVES;
    const drawn = REACH * (turn < 1 ? turn : 2 - turn);
    await client.send('Input.dispatchMouseEvent', {
      type: 'mouseMoved',
      x: x - REACH + drawn,
      y,
      button: 'left',
      buttons: 1,
    });
    const wait = begin + (move + 1) * PACE - performance.now();
    if (wait > 0) await new Promise((resolve) => setTimeout(resolve, wait));
  }
}
