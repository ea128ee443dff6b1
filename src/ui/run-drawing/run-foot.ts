// What stands under the drawing: what is read of a part, and the buttons that zoom.

import { html, type TemplateResult } from 'lit';
import type { PartReading } from '../../state/part-reading.ts';

/** What the buttons do, and which of them have nothing to do. */
export interface ZoomButtons {
  readonly isWhole: boolean;
  readonly isClosest: boolean;
  readonly zoom: (way: 'in' | 'out' | 'whole') => void;
}

/**
 * Writes what is read.
 *
 * @param reading - name and figures, if anything is pointed at
 * @returns a line or two
 */
export function runReading(reading: PartReading | undefined): TemplateResult {
  if (!reading) return html`<p class="reading hint">Select a duct or a drop to read it.</p>`;
  return html`<p class="reading">
    <strong>${reading.name}</strong> ${reading.figures.map(
      (figure) => html`<span class="figure">${figure}</span> `,
    )}
  </p>`;
}

/**
 * Writes the buttons. One with nothing to do stays where the focus can rest on it.
 *
 * @param buttons - what they do
 * @returns three buttons
 */
export function zoomButtons({ isWhole, isClosest, zoom }: ZoomButtons): TemplateResult {
  return html`<div class="zoom" role="group" aria-label="Zoom of the drawing">
    ${zoomButton('Zoom out', '−', isWhole, () => zoom('out'))}
    ${zoomButton('Zoom in', '+', isClosest, () => zoom('in'))}
    ${zoomButton('Show the whole run', 'whole', isWhole, () => zoom('whole'))}
  </div>`;
}

function zoomButton(
  words: string,
  sign: string,
  isIdle: boolean,
  press: () => void,
): TemplateResult {
  return html`<button
    type="button"
    aria-label=${words}
    aria-disabled=${isIdle ? 'true' : 'false'}
    @click=${press}
  >
    <span class=${sign.length === 1 ? 'sign' : ''}>${sign}</span>
  </button>`;
}
