// What the page does in a frame while its worker answers on the worst shop: 40 drops along a trunk,
// every size of the main and then all collectors at hand, every drop alone and 20 gate sets, each again
// for 256 cases. The page is scrolled meanwhile, so that there are frames.
//
// Two numbers: the frames while the worker works, and the single longest frame of all, in which an
// answer may be drawn.

import type { Page } from 'playwright-core';
import type { Shop } from '../../src/shop/schema/shop-schema.ts';
import { longShop } from '../setup/long-shop.ts';
import { showShop } from './drag-gate.ts';
import { type FrameWork, frameWork, type TraceEvent } from './trace-frames.ts';

const DROPS = 40;
const SETS = 20;
const OPEN_IN_SET = 3;
/** A worker that takes longer is left at its work [ms]. */
const LONGEST = 90_000;
const QUESTIONS = [
  ['Would a larger main help?', 'dc-main-panel'],
  ['Which collector?', 'dc-collectors-panel'],
] as const;

/** Every frame of the page while both questions are worked out. */
export async function decisionFrames(page: Page): Promise<readonly FrameWork[]> {
  await showShop(page, worstShop(), []);
  const browser = page.context().browser();
  if (!browser) throw new Error('only a browser of its own can be traced');
  const frames: FrameWork[] = [];
  for (const [heading, panel] of QUESTIONS) {
    // Found beforehand: a search goes through the whole page, in its own thread, for 30 ms and more.
    const host = await page.waitForSelector(panel, { state: 'attached' });
    const part = page.getByRole('heading', { level: 2, name: heading });
    await part.scrollIntoViewIfNeeded();
    const box = await part.boundingBox();
    if (!box) throw new Error(`${heading} is not to be seen`);
    await browser.startTracing(page, { categories: ['devtools.timeline'] });
    await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
    const begun = performance.now();
    for (let turn = 0; !(await host.evaluate(isSure)); turn++) {
      if (performance.now() - begun > LONGEST) throw new Error(`no answer in ${panel}`);
      await page.mouse.wheel(0, turn % 2 === 0 ? 8 : -8);
      await page.waitForTimeout(50);
    }
    const trace = JSON.parse(String(await browser.stopTracing())) as { traceEvents: TraceEvent[] };
    frames.push(...frameWork(trace.traceEvents));
  }
  return frames;
}

/** Whether the panel says how sure its answer is, which comes last. */
function isSure(panel: Element): boolean {
  const doubt = panel.shadowRoot?.querySelector('dc-doubt-part');
  return doubt !== undefined && doubt !== null && doubt.words !== '';
}

function worstShop(): Shop {
  const shop = longShop(DROPS);
  return {
    ...shop,
    gateSets: Array.from({ length: SETS }, (_, set) => ({
      id: `set-${set + 1}`,
      name: `Set ${set + 1}`,
      open: Array.from(
        { length: OPEN_IN_SET },
        (__, k) => `drop-${((7 * set + 13 * k) % DROPS) + 1}`,
      ),
    })),
  };
}
