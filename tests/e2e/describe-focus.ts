// What has the focus, through all shadow roots, in the words that a screen reader would go by.
import type { Page } from 'playwright-core';

export interface Focus {
  /** Tag name, or the type of a button-like input. */
  readonly role: string;
  readonly name: string;
  /** 'true' or 'false' on what opens and shuts; empty elsewhere. */
  readonly expanded: string;
  /** What a field holds, or the chosen entry of a list. */
  readonly value: string;
}

export function describeFocus(page: Page): Promise<Focus> {
  return page.evaluate(() => {
    let focused = document.activeElement;
    while (focused?.shadowRoot?.activeElement) focused = focused.shadowRoot.activeElement;
    const tag = focused?.localName ?? '';
    const type = focused instanceof HTMLInputElement ? focused.type : '';
    const labels = focused && 'labels' in focused ? (focused as HTMLInputElement).labels : null;
    const words =
      focused?.getAttribute('aria-label') ?? labels?.[0]?.textContent ?? focused?.textContent ?? '';
    const value =
      focused instanceof HTMLSelectElement
        ? (focused.selectedOptions[0]?.textContent ?? '')
        : focused instanceof HTMLInputElement
          ? focused.value
          : '';
    return {
      role: type === 'radio' || type === 'checkbox' ? type : tag,
      name: words.replace(/\s+/g, ' ').trim(),
      expanded: focused?.getAttribute('aria-expanded') ?? '',
      value: value.trim(),
    };
  });
}

/** Where in the focused list an entry is, and which is the last. */
export async function placeInList(
  page: Page,
  words: string,
): Promise<{ at: number; last: number }> {
  const entries = await page.evaluate(() => {
    let focused = document.activeElement;
    while (focused?.shadowRoot?.activeElement) focused = focused.shadowRoot.activeElement;
    const list = focused instanceof HTMLSelectElement ? [...focused.options] : [];
    return list.map(({ text }) => text.trim());
  });
  const at = entries.indexOf(words);
  if (at === -1) throw new Error(`no entry ${words} in ${entries.join(', ')}`);
  return { at, last: entries.length - 1 };
}

/** The rows of the outline from top to bottom, as they read. */
export async function rowNames(page: Page): Promise<string[]> {
  const texts = await page.locator('dc-run-outline li > button').allTextContents();
  return texts.map((text) => text.replace(/\s+/g, ' ').trim());
}
