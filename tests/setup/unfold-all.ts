// Unfolds everything on a page that is folded, and what that brings to light.
import type { Page } from 'playwright-core';

/** Rounds of unfolding; nothing on the page is folded deeper. */
const ROUNDS = 6;

export async function unfoldAll(page: Page): Promise<void> {
  for (let round = 0; round < ROUNDS; round++) {
    const unfolded = await page.evaluate(() => {
      const deep = (root: ParentNode): Element[] =>
        [...root.querySelectorAll('*')].flatMap((each) =>
          each.shadowRoot ? [each, ...deep(each.shadowRoot)] : [each],
        );
      const folded = deep(document).filter(
        (each): each is HTMLDetailsElement => each instanceof HTMLDetailsElement && !each.open,
      );
      for (const each of folded) each.querySelector('summary')?.click();
      return folded.length;
    });
    if (unfolded === 0 && round > 0) return;
    await page.waitForTimeout(300);
  }
}
