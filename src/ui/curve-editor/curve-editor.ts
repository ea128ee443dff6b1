// A collector's curve as it is typed: its name, its points, and what these points mean.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { Curve } from '../../shop/schema/curve-schema.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import '../points-table/points-table.ts';
import type { PointsEvent } from '../points-table/points-event.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { fieldStyles } from '../styles/field.styles.ts';
import type { TextEvent } from '../text-field/text-event.ts';
import '../text-field/text-field.ts';
import { curveEditorStyles } from './curve-editor.styles.ts';
import { CurveEvent } from './curve-event.ts';
import { BASIS_WORDS, basisWords } from './curve-words.ts';

const BASES = BASIS_WORDS.map(({ kind, choice }) => ({ value: kind, words: choice }));
/** Inside diameter of the pipe with the tap, until it is said: 6 in. [m]. */
const USUAL_TAP = 0.1524;

/**
 * @element dc-curve-editor
 * @fires dc-curve - the curve is another now
 */
@customElement('dc-curve-editor')
export class CurveEditor extends LitElement {
  static override styles = [baseStyles, fieldStyles, curveEditorStyles];

  @property({ attribute: false }) curve: Curve | undefined;

  @property({ attribute: false }) units: UnitSystem = 'us';

  protected override render(): TemplateResult {
    const { curve, units } = this;
    if (!curve) return html`${nothing}`;
    const words = basisWords(curve.basis.kind);
    return html`<dc-points-table
        .points=${curve.points}
        .units=${units}
        .pressure=${words.column}
        .fit=${curve.fit?.kind ?? 'through'}
        @dc-points=${(event: PointsEvent) => this.#onPoints(event)}
      ></dc-points-table>
      <div class="meaning">
        <dc-text-field
          label="Name of the collector"
          .value=${curve.name}
          @dc-text=${(event: TextEvent) => this.#onName(event)}
        ></dc-text-field>
        <dc-choice-field
          label="The pressures are"
          .choices=${BASES}
          .value=${curve.basis.kind}
          .hint=${words.explanation}
          @dc-choice=${(event: ChoiceEvent) => this.#onBasis(event)}
        ></dc-choice-field>
        ${curve.basis.kind === 'tap' ? this.#tap(curve.basis.diameter) : nothing}
        <fieldset>
          <legend>Taken with, so that it is not taken off again</legend>
          ${this.#part('filter', 'its clean filter')}${this.#part('separator', 'its separator')}
        </fieldset>
        <dc-quantity-field
          label="The points hold in air of"
          quantity="density"
          .units=${units}
          .value=${curve.density}
          .low=${0.01}
          .high=${2000}
          hint="Charts are mostly for 1.2 kg/m³, 0.075 lb/ft³."
          @dc-quantity=${(event: QuantityEvent) => this.#onAmount(event, (density) => ({ density }))}
        ></dc-quantity-field>
      </div>`;
  }

  #tap(diameter: number): TemplateResult {
    return html`<dc-quantity-field
      label="Inside diameter of the pipe with the tap"
      quantity="diameter"
      .units=${this.units}
      .value=${diameter}
      .low=${0.01}
      .high=${2}
      @dc-quantity=${(event: QuantityEvent) =>
        this.#onAmount(event, (value) => ({ basis: { kind: 'tap', diameter: value } }))}
    ></dc-quantity-field>`;
  }

  #part(part: 'filter' | 'separator', words: string): TemplateResult {
    return html`<label
      ><input
        type="checkbox"
        .checked=${live(this.curve?.includes[part] ?? false)}
        @change=${(event: Event) => this.#onPart(event, part)}
      />${words}</label
    >`;
  }

  #onPoints(event: PointsEvent): void {
    event.stopPropagation();
    this.#send({ points: event.points });
  }

  #onName(event: TextEvent): void {
    event.stopPropagation();
    if (event.value !== undefined) this.#send({ name: event.value });
  }

  #onBasis(event: ChoiceEvent): void {
    event.stopPropagation();
    const { value } = event;
    const basis =
      value === 'tap'
        ? ({ kind: 'tap', diameter: USUAL_TAP } as const)
        : ({ kind: value === 'total' ? 'total' : 'fan-static' } as const);
    this.#send({ basis });
  }

  #onAmount(event: QuantityEvent, changes: (value: number) => Partial<Curve>): void {
    event.stopPropagation();
    if (event.value !== undefined) this.#send(changes(event.value));
  }

  #onPart(event: Event, part: 'filter' | 'separator'): void {
    const { checked } = event.currentTarget as HTMLInputElement;
    if (this.curve) this.#send({ includes: { ...this.curve.includes, [part]: checked } });
  }

  #send(changes: Partial<Curve>): void {
    if (this.curve) this.dispatchEvent(new CurveEvent({ ...this.curve, ...changes }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-curve-editor': CurveEditor;
  }
}
