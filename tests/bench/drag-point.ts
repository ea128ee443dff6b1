// Drags a point of the collector's curve of the built page and records what the page does meanwhile.

import type { Page } from 'playwright-core';
import { type DragRecord, type DragWatch, recordDrag } from './record-drag.ts';

/** How far the point is drawn aside and down [px]. */
const REACH = { x: 24, y: 48 };

/** Unfolds the collector and waits for its plot. */
export async function showCurve(page: Page): Promise<void> {
  await page.getByRole('heading', { name: 'Collector', exact: true }).click();
  await page.getByRole('slider', { name: 'Point 4 of the curve', exact: true }).waitFor();
  await page.waitForTimeout(500);
}

/**
 * Drags a point in the midst of the curve to and fro.
 *
 * @param page - showing the plot of the curve
 * @param how - how long, how slow, and what is recorded
 */
export async function dragPoint(page: Page, how: DragWatch): Promise<DragRecord> {
  const mark = page.getByRole('slider', { name: 'Point 4 of the curve', exact: true });
  await mark.scrollIntoViewIfNeeded();
  await page.waitForTimeout(300);
  const box = await mark.boundingBox();
  if (!box) throw new Error('the point is not to be seen');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  return recordDrag(
    page,
    { x, y },
    (part) => ({ x: x + REACH.x * part, y: y + REACH.y * part }),
    how,
  );
}
