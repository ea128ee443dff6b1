// The fields of one axis of a chart: its unit, how its values run, and what its two marks stand for.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { AxisName, AxisScale } from '../../plot/chart-trace/chart-mapping.ts';
import { valueProblem } from '../../plot/chart-trace/fault-words.ts';
import { axisWords } from '../../plot/chart-trace/trace-words.ts';
import type { TracedAxis } from '../../plot/chart-trace/traced-chart.ts';
import { askedUnits } from '../../state/pasted/column-units.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { type UnitName, UNITS } from '../../units/unit.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import type { Choice } from '../choice-field/choice-field.ts';
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
 * @fires dc-axis - a value, the unit or the spacing is another now
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
      <dc-choice-field
        label="Its numbers are in"
        .choices=${this.#units}
        .value=${traced.unit ?? this.#usual}
        @dc-choice=${(event: ChoiceEvent) => this.#onUnit(event)}
      ></dc-choice-field>
      <dc-choice-field
        label="Its values are"
        .choices=${SCALES}
        .value=${traced.scale}
        @dc-choice=${(event: ChoiceEvent) => this.#onScale(event)}
      ></dc-choice-field>
      ${this.#value(0, traced)}${this.#value(1, traced)}
    </fieldset>`;
  }

  /** The unit that holds while none was chosen. */
  get #usual(): UnitName {
    return askedUnits(this.axis, this.units)[0]!;
  }

  get #units(): readonly Choice[] {
    return askedUnits(this.axis, this.units).map((value) => ({ value, words: UNITS[value].label }));
  }

  #value(index: 0 | 1, traced: TracedAxis): TemplateResult {
    const { place, value } = traced.marks[index];
    return html`<dc-quantity-field
      label=${index === 0 ? 'First mark' : 'Second mark'}
      quantity=${this.axis}
      .units=${this.units}
      .unit=${traced.unit}
      .value=${value}
      .problem=${valueProblem(this.axis, traced, index, this.units)}
      .hint=${place ? '' : 'Not marked yet.'}
      optional
      @dc-quantity=${(event: QuantityEvent) => this.#onValue(event, index)}
    ></dc-quantity-field>`;
  }

  #onUnit(event: ChoiceEvent): void {
    event.stopPropagation();
    const unit = askedUnits(this.axis, this.units).find((name) => name === event.value);
    if (unit) this.dispatchEvent(new AxisEvent({ kind: 'unit', unit }));
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
