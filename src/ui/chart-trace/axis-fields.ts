// The fields of one axis of a chart: how its values run, and what its two marks stand for.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { AxisName, AxisScale } from '../../plot/chart-trace/chart-mapping.ts';
import type { AxisMark, TracedAxis } from '../../plot/chart-trace/traced-chart.ts';
import { axisWords } from '../../plot/chart-trace/trace-words.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { AxisEvent } from './axis-event.ts';

const SCALES: readonly { readonly value: AxisScale; readonly words: string }[] = [
  { value: 'linear', words: 'evenly spaced' },
  { value: 'logarithmic', words: 'logarithmic' },
];

/**
 * @element dc-axis-fields
 * @fires dc-axis - a value or the spacing is another now
 */
@customElement('dc-axis-fields')
export class AxisFields extends LitElement {
  static override styles = [
    baseStyles,
    css`
      fieldset {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 160px), 1fr));
        gap: 8px 16px;
        align-items: start;
        min-inline-size: 0;
        margin: 0 0 16px;
        padding: 0;
        border: 0;
      }

      legend {
        padding: 0;
        font-weight: 600;
        line-height: 1.75rem;
      }
    `,
  ];

  @property({ attribute: false }) axis: AxisName = 'flow';
  @property({ attribute: false }) traced: TracedAxis | undefined;
  @property({ attribute: false }) units: UnitSystem = 'us';

  protected override render(): TemplateResult {
    const { traced } = this;
    if (!traced) return html`${nothing}`;
    return html`<fieldset>
      <legend>${axisWords(this.axis)}</legend>
      ${this.#value(0, traced.marks[0])}${this.#value(1, traced.marks[1])}
      <dc-choice-field
        label="Its values are"
        .choices=${SCALES}
        .value=${traced.scale}
        @dc-choice=${(event: ChoiceEvent) => this.#onScale(event)}
      ></dc-choice-field>
    </fieldset>`;
  }

  #value(index: 0 | 1, { place, value }: AxisMark): TemplateResult {
    return html`<dc-quantity-field
      label=${index === 0 ? 'First mark' : 'Second mark'}
      quantity=${this.axis}
      .units=${this.units}
      .value=${value}
      .hint=${place ? 'Another unit can be typed with it.' : 'Not marked yet.'}
      optional
      @dc-quantity=${(event: QuantityEvent) => this.#onValue(event, index)}
    ></dc-quantity-field>`;
  }

  #onValue(event: QuantityEvent, index: 0 | 1): void {
    event.stopPropagation();
    this.dispatchEvent(new AxisEvent({ kind: 'value', index, value: event.value }));
  }

  #onScale(event: ChoiceEvent): void {
    event.stopPropagation();
    const scale = event.value === 'logarithmic' ? 'logarithmic' : 'linear';
    this.dispatchEvent(new AxisEvent({ kind: 'scale', scale }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-axis-fields': AxisFields;
  }
}
