// What a collector's curve is called, how its line goes, and what its pressures mean.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { usedPoints } from '../../curve/used-points.ts';
import type { Curve } from '../../shop/schema/curve-schema.ts';
import { fitWords } from '../../state/collector/fit-words.ts';
import { withOrWithout } from '../../state/with-or-without.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import '../basis-choice/basis-choice.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { fieldStyles } from '../styles/field.styles.ts';
import type { TextEvent } from '../text-field/text-event.ts';
import '../text-field/text-field.ts';
import { CurveEditEvent } from './curve-edit-event.ts';

/** Inside diameter of the pipe with the tap, until it is said: 6 in. [m]. */
const USUAL_TAP = 0.1524;

const FITS = [
  { value: 'through', words: 'exactly through the points' },
  { value: 'smooth', words: 'smoothed between scattered readings' },
];

/**
 * @element dc-curve-meaning
 * @fires dc-curve-edit - something was changed
 */
@customElement('dc-curve-meaning')
export class CurveMeaning extends LitElement {
  static override styles = [
    baseStyles,
    fieldStyles,
    css`
      :host {
        display: grid;
        gap: 12px;
        max-inline-size: 32.5rem;
      }

      fieldset {
        margin: 0;
        padding: 0;
        border: 0;
      }

      legend {
        padding: 0;
        color: var(--dc-ink-soft);
        font-size: var(--dc-small);
        line-height: 1.125rem;
      }

      fieldset label {
        display: flex;
        align-items: center;
        gap: 8px;
        min-block-size: 44px;
        cursor: pointer;
      }

      fieldset input {
        flex: none;
        inline-size: 1.125rem;
        block-size: 1.125rem;
        margin: 0;
        accent-color: var(--dc-ink);
      }
    `,
  ];

  @property({ attribute: false }) curve: Curve | undefined;
  @property({ attribute: false }) units: UnitSystem = 'us';

  protected override render(): TemplateResult {
    const { curve, units } = this;
    if (!curve) return html`${nothing}`;
    return html`<dc-text-field
        label="Name of the collector"
        .value=${curve.name}
        @dc-text=${(event: TextEvent) => this.#onName(event)}
      ></dc-text-field>
      <dc-choice-field
        label="The line goes"
        .choices=${FITS}
        .value=${curve.fit?.kind ?? 'through'}
        .hint=${usedPoints(curve).length < 2 ? '' : fitWords(curve, units)}
        @dc-choice=${(event: ChoiceEvent) => this.#onFit(event)}
      ></dc-choice-field>
      <dc-basis-choice
        .value=${curve.basis.kind}
        @dc-choice=${(event: ChoiceEvent) => this.#onBasis(event)}
      ></dc-basis-choice>
      ${curve.basis.kind === 'tap' ? this.#tap(curve.basis.diameter) : nothing}
      <fieldset>
        <legend>Taken with, so that it is not taken off again</legend>
        ${this.#part(curve, 'filter', 'its clean filter')}
        ${this.#part(curve, 'separator', 'its separator')}
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
      ></dc-quantity-field>`;
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

  #part({ includes }: Curve, part: 'filter' | 'separator', words: string): TemplateResult {
    return html`<label
      ><input
        type="checkbox"
        .checked=${live(includes[part])}
        @change=${(event: Event) => this.#onPart(event, part)}
      />${words}</label
    >`;
  }

  #onName(event: TextEvent): void {
    event.stopPropagation();
    const { value } = event;
    if (value !== undefined) this.#send((curve) => ({ ...curve, name: value }));
  }

  #onBasis(event: ChoiceEvent): void {
    event.stopPropagation();
    const { value } = event;
    const basis =
      value === 'tap'
        ? ({ kind: 'tap', diameter: USUAL_TAP } as const)
        : ({ kind: value === 'total' ? 'total' : 'fan-static' } as const);
    this.#send((curve) => ({ ...curve, basis }));
  }

  #onFit(event: ChoiceEvent): void {
    event.stopPropagation();
    const fit = event.value === 'smooth' ? ({ kind: 'smooth' } as const) : undefined;
    this.#send((curve) => withOrWithout(curve, 'fit', fit));
  }

  #onAmount(event: QuantityEvent, changes: (value: number) => Partial<Curve>): void {
    event.stopPropagation();
    const { value } = event;
    if (value !== undefined) this.#send((curve) => ({ ...curve, ...changes(value) }));
  }

  #onPart(event: Event, part: 'filter' | 'separator'): void {
    const { checked } = event.currentTarget as HTMLInputElement;
    this.#send((curve) => ({ ...curve, includes: { ...curve.includes, [part]: checked } }));
  }

  #send(edit: (curve: Curve) => Curve): void {
    this.dispatchEvent(new CurveEditEvent(edit));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-curve-meaning': CurveMeaning;
  }
}
