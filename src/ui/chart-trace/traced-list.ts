// The points traced so far, with what they stand for.

import { html, type TemplateResult } from 'lit';
import type { CurvePoint } from '../../curve/curve-data.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';

/** What can be done with a point. */
export interface TracedWishes {
  readonly hold: (index: number) => void;
  readonly remove: (index: number) => void;
}

/**
 * Writes the list.
 *
 * @param values - what each point stands for, in the order in which they were set
 * @param units - the units to speak in
 * @param wishes - what the buttons do
 * @returns a list
 */
export function tracedList(
  values: readonly CurvePoint[],
  units: UnitSystem,
  wishes: TracedWishes,
): TemplateResult {
  return html`<ol role="list">
    ${values.map(
      ({ flow, pressure }, i) => html`<li>
        <span>${i + 1}</span>
        <span class="end">${formatQuantity('flow', units, flow).text}</span>
        <span class="end">${formatQuantity('pressure', units, pressure).text}</span>
        <button type="button" aria-label="Move point ${i + 1}" @click=${() => wishes.hold(i)}>
          <span>Move</span>
        </button>
        <button type="button" aria-label="Remove traced point ${i + 1}" @click=${() => wishes.remove(i)}>
          <span aria-hidden="true">×</span>
        </button>
      </li>`,
    )}
  </ol>`;
}
