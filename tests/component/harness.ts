// How component tests work an element: by what a reader or a screen reader finds, never by its
// insides. The page's colours are loaded, so that contrast is checked as shipped.
import { expect as expectOfPage, fixture, fixtureCleanup, html } from '@open-wc/testing';
import { afterEach } from 'vitest';
import { page } from 'vitest/browser';
import '../../src/app/page.css';

export { html } from '@open-wc/testing';
export { expect } from 'vitest';

afterEach(() => fixtureCleanup());

/** Runs axe on an element, its shadow roots included. */
export async function expectAccessible(element: Element): Promise<void> {
  await expectOfPage(element).to.be.accessible();
}

/** Puts a template on the page, in a landmark, and waits until it is drawn. */
export async function place<T extends Element>(template: ReturnType<typeof html>): Promise<T> {
  const main = await fixture<HTMLElement>(html`<main>${template}</main>`);
  const element = main.firstElementChild as T;
  await drawn();
  return element;
}

/** Puts a template with landmarks of its own on the page. */
export async function placeWhole<T extends Element>(template: ReturnType<typeof html>): Promise<T> {
  const element = await fixture<T>(template);
  await drawn();
  return element;
}

/** Three frames: for sizes to become known, to draw by them, and to have been drawn. */
export async function drawn(): Promise<void> {
  for (let i = 0; i < 3; i++) await new Promise((resolve) => requestAnimationFrame(resolve));
}

/** Until nothing on the page is drawn piece by piece any more. */
export async function drawnWhole(): Promise<void> {
  for (let quiet = 0; quiet < 5; quiet++) {
    await drawn();
    if (isBusy(document)) quiet = 0;
  }
}

function isBusy(root: ParentNode): boolean {
  return [...root.querySelectorAll('*')].some(
    (each) => each.ariaBusy === 'true' || (each.shadowRoot !== null && isBusy(each.shadowRoot)),
  );
}

export const slider = (name: string | RegExp) => page.getByRole('slider', { name });
export const button = (name: string | RegExp) => page.getByRole('button', { name, exact: true });
export const picture = (name: string | RegExp) => page.getByRole('img', { name });
export const radio = (name: string) => page.getByRole('radio', { name, exact: true });
export const text = (words: string | RegExp) => page.getByText(words);

/** The next event of a kind, of which there may be several before the promise is read. */
export function heard<K extends keyof HTMLElementEventMap>(
  target: Element,
  type: K,
): HTMLElementEventMap[K][] {
  const events: HTMLElementEventMap[K][] = [];
  target.addEventListener(type, (event) => events.push(event as HTMLElementEventMap[K]));
  return events;
}
