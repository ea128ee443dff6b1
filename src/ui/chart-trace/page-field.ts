// Which page of a PDF is shown: a field for its number, and a step to each side.

import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';

/** What is shown of a file. */
export interface ShownPage {
  readonly page: number;
  readonly count: number;
  /** What is wrong with the number that was typed. */
  readonly problem: string;
}

/**
 * Writes the field.
 *
 * @param shown - the page
 * @param turn - is told what was typed, or the number of the page to each side
 * @returns a label, a field and two buttons
 */
export function pageField(
  { page, count, problem }: ShownPage,
  turn: (words: string) => void,
): TemplateResult {
  const step = (words: string, to: number) =>
    to < 1 || to > count
      ? nothing
      : html`<button type="button" @click=${() => turn(String(to))}><span>${words}</span></button>`;
  return html`<div class="page">
    <label for="page">Page, of ${count}</label>
    <input
      id="page"
      class="line"
      type="text"
      inputmode="numeric"
      autocomplete="off"
      enterkeyhint="go"
      .value=${live(String(page))}
      aria-invalid=${problem === '' ? nothing : 'true'}
      aria-describedby="page-problem"
      @change=${(event: Event) => turn((event.currentTarget as HTMLInputElement).value)}
    />
    ${step('Page before', page - 1)}${step('Next page', page + 1)}
    <p id="page-problem" class="problem" role="alert">${problem}</p>
  </div>`;
}

/**
 * Reads the number of a page.
 *
 * @param words - as typed
 * @param count - how many pages there are
 * @returns the number, or what is wrong with it
 */
export function readPage(words: string, count: number): number | string {
  const page = Number(words.trim());
  if (words.trim() !== '' && Number.isInteger(page) && page >= 1 && page <= count) return page;
  return `There is no page “${words.trim()}”: type a number from 1 to ${count}.`;
}
