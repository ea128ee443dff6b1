// Waits until the page is whole: with the parts that are fetched after the first, and with what is drawn
// piece by piece.

import type { Page } from 'playwright-core';

/** Figures are drawn for their size two frames after it is known [ms]. */
const REDRAWN = 150;

/** Opens an address; done when its gates are shown and the page is whole. */
export async function openWhole(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.getByRole('slider').first().waitFor();
  await untilWhole(page);
}

/** Makes the window as wide; done when the page is drawn for that. */
export async function resizeWhole(page: Page, width: number, height = 900): Promise<void> {
  await page.setViewportSize({ width, height });
  await page.waitForTimeout(REDRAWN);
  await untilWhole(page);
}

/** Done when every element that is shown has its script, and none is drawn piece by piece any more. */
export async function untilWhole(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    const roots: ParentNode[] = [document];
    for (const root of roots) {
      for (const each of root.querySelectorAll('*')) {
        // What a folded part holds is fetched when it is unfolded.
        const isAwaited = !each.matches(':defined') && each.checkVisibility();
        if (isAwaited || each.ariaBusy === 'true') return false;
        if (each.shadowRoot) roots.push(each.shadowRoot);
      }
    }
    return true;
  });
}
