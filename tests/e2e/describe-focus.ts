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
