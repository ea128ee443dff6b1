// Drags a gate of the built page by the mouse and records what the page does meanwhile.

import type { Page } from 'playwright-core';
import type { Shop } from '../../src/shop/schema/shop-schema.ts';
import { type DragRecord, type DragWatch, recordDrag } from './record-drag.ts';

/** How far the blade is drawn each way [px]. */
const REACH = 36;

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
 * @param how - how long, how slow, and what is recorded
 */
export async function dragGate(page: Page, drop: string, how: DragWatch): Promise<DragRecord> {
  const gate = page.getByRole('slider', { name: `Gate, ${drop}`, exact: true });
  await gate.scrollIntoViewIfNeeded();
  await gate.press('End');
  await page.waitForTimeout(300);
  const box = await gate.boundingBox();
  if (!box) throw new Error(`the gate of ${drop} is not to be seen`);
  const [x, y] = [box.x + 40, box.y + box.height / 2];
  return recordDrag(page, { x, y }, (part) => ({ x: x - REACH + REACH * part, y }), how);
}
