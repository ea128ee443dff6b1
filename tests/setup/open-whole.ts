// Waits until the page is whole: with the parts that are fetched after the first, and with what is drawn
// piece by piece.

import type { Page } from 'playwright-core';

/** Opens an address; done when its gates are shown and every element that is shown has its script. */
export async function openWhole(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.getByRole('slider').first().waitFor();
  await page.waitForFunction(() => {
    const roots: ParentNode[] = [document];
    for (const root of roots) {
      for (const each of root.querySelectorAll('*')) {
        // What a folded part holds is fetched when it is unfolded.
        if (!each.matches(':defined') && each.checkVisibility()) return false;
        if (each.shadowRoot) roots.push(each.shadowRoot);
      }
    }
    return true;
  });
}

/** Done when nothing on the page is drawn piece by piece any more. */
export async function drawnWhole(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    const roots: ParentNode[] = [document];
    for (const root of roots) {
      for (const each of root.querySelectorAll('*')) {
        if (each.ariaBusy === 'true') return false;
        if (each.shadowRoot) roots.push(each.shadowRoot);
      }
    }
    return true;
  });
}
