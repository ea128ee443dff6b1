// The points traced so far, with what they stand for, how finely, and the ways to take them over.

import { html, nothing, type TemplateResult } from 'lit';
import { pixelWorth } from '../../plot/chart-trace/chart-mapping.ts';
import { LEAST_POINTS } from '../../plot/chart-trace/trace-words.ts';
import type { TracedChart } from '../../plot/chart-trace/traced-chart.ts';
import { mappingOf, tracedValues } from '../../plot/chart-trace/traced-values.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';

/** What can be done with the points. */
export interface PointWishes {
  readonly hold: (index: number) => void;
  readonly remove: (index: number) => void;
  readonly take: (how: 'replace' | 'add') => void;
}

/**
 * Writes the points.
 *
 * @param chart - the chart that they are on
 * @param units - the units to speak in
 * @param wishes - what the buttons do
 * @returns the list with its buttons; nothing while the chart can't be read
 */
export function tracedPoints(
  chart: TracedChart,
  units: UnitSystem,
  wishes: PointWishes,
): TemplateResult | typeof nothing {
  const mapping = mappingOf(chart);
  if (mapping?.kind !== 'ready') return nothing;
  const values = tracedValues(chart);
  const isEnough = values.length >= LEAST_POINTS;
  const amount = (what: 'flow' | 'pressure', value: number) =>
    formatQuantity(what, units, value).text;
  const last = chart.points.at(-1);
  const worth = last && pixelWorth(mapping.read, last);
  return html`<fieldset>
    <legend>Points on the curve</legend>
    <ol role="list">
      ${values.map(
        ({ flow, pressure }, i) => html`<li>
          <span>${i + 1}</span>
          <span class="end">${amount('flow', flow)}</span>
          <span class="end">${amount('pressure', pressure)}</span>
          <button type="button" aria-label="Move point ${i + 1}" @click=${() => wishes.hold(i)}>
            <span>Move</span>
          </button>
          <button
            type="button"
            aria-label="Remove traced point ${i + 1}"
            @click=${() => wishes.remove(i)}
          >
            <span aria-hidden="true">×</span>
          </button>
        </li>`,
      )}
    </ol>
    ${
      worth
        ? html`<p class="hint">
            A pixel of the picture is worth up to ${amount('flow', worth.flow)} and
            ${amount('pressure', worth.pressure)} at the last point.
          </p>`
        : nothing
    }
    <div class="take">
      <button type="button" ?disabled=${!isEnough} @click=${() => wishes.take('replace')}>
        <span>Put them in the place of the curve’s points</span>
      </button>
      <button type="button" ?disabled=${!isEnough} @click=${() => wishes.take('add')}>
        <span>Add them to the curve’s points</span>
      </button>
    </div>
  </fieldset>`;
}
