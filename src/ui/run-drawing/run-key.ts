// The key above the drawing: what each shape of duct means, in words.

import { html, type TemplateResult } from 'lit';
import type { RunState } from '../../state/run-view.ts';
import { ducts } from './run-duct.ts';

const STATES: readonly RunState[] = ['carries', 'settles', 'tight', 'still'];
const SAMPLE = { path: 'M28,7H0', weight: 6.5, arrows: [14], y: 7 };

/**
 * Writes the key.
 *
 * @param speedUnit - what the speeds on the drawing are written in
 * @returns a line of the four states
 */
export function runKey(speedUnit: string): TemplateResult {
  return html`<p class="key">
    <span>${speedUnit}</span>${STATES.map(
      (state) =>
        html`<span class="item"
          ><svg width="28" height="14" aria-hidden="true">${ducts([{ ...SAMPLE, id: state, state }])}</svg
          >${state}</span
        >`,
    )}
  </p>`;
}
