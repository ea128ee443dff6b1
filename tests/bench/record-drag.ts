// Drags something of the built page by the mouse, in step with the screen, and records what the page
// does meanwhile.

import type { CDPSession, Page } from 'playwright-core';
import type { CpuProfile } from './profile-rooms.ts';
import { slowEvenly } from './slow-evenly.ts';
import { type FrameWork, frameWork, type TraceEvent } from './trace-frames.ts';

const CATEGORIES = ['devtools.timeline'];
/** One move a frame [ms]. */
const PACE = 1000 / 60;
/** Moves one way, until the mouse turns. */
const MOVES = 60;
/** Moves that are not counted, until the code is warm. */
const WARM_UP = 120;

/** What was recorded during a drag. */
export interface DragRecord {
  readonly frames: readonly FrameWork[];
  readonly profile: CpuProfile | undefined;
}

/** Places of the mouse [px], from one end of the way, 0, to the other, 1, and back. */
export type DragPath = (part: number) => { readonly x: number; readonly y: number };

/** How a drag is made and watched. */
export interface DragWatch {
  /** How many moves of the mouse are recorded, one a frame. */
  readonly moves: number;
  /** The rate at which Chromium is to slow the processor; 1 for its own speed. */
  readonly slowdown: number;
  /** 'time' for frames alone, 'profile' to see what the time went to as well. */
  readonly watch: 'time' | 'profile';
}

/**
 * Drags to and fro.
 *
 * @param page - the page
 * @param grip - where the mouse takes hold [px]
 * @param path - where it goes then
 * @param how - how long, how slow, and what is recorded
 */
export async function recordDrag(
  page: Page,
  grip: { readonly x: number; readonly y: number },
  path: DragPath,
  { moves, slowdown, watch }: DragWatch,
): Promise<DragRecord> {
  const browser = page.context().browser();
  if (!browser) throw new Error('only a browser of its own can be traced');
  const client = await page.context().newCDPSession(page);
  await page.mouse.move(grip.x, grip.y);
  await page.mouse.down();
  await slowEvenly(client, slowdown);
  await drag(client, path, WARM_UP);
  await browser.startTracing(page, { categories: CATEGORIES });
  if (watch === 'profile') {
    await client.send('Profiler.enable');
    await client.send('Profiler.setSamplingInterval', { interval: 100 });
    await client.send('Profiler.start');
  }
  await drag(client, path, moves);
  const profile =
    watch === 'profile' ? ((await client.send('Profiler.stop')).profile as CpuProfile) : undefined;
  const trace = JSON.parse(String(await browser.stopTracing())) as { traceEvents: TraceEvent[] };
  await slowEvenly(client, 1);
  await page.mouse.up();
  await client.detach();
  return { frames: frameWork(trace.traceEvents), profile };
}

async function drag(client: CDPSession, path: DragPath, moves: number): Promise<void> {
  const begin = performance.now();
  for (let move = 0; move < moves; move++) {
    const turn = (move % (2 * MOVES)) / MOVES;
    await client.send('Input.dispatchMouseEvent', {
      type: 'mouseMoved',
      ...path(turn < 1 ? turn : 2 - turn),
      button: 'left',
      buttons: 1,
    });
    const wait = begin + (move + 1) * PACE - performance.now();
    if (wait > 0) await new Promise((resolve) => setTimeout(resolve, wait));
  }
}
