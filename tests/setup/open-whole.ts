// Opens the page and waits until the parts that are fetched after the first are there too.

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
