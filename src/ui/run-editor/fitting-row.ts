// One fitting of a section, or several of the same kind: its shape, how many, what one of it loses,
// and where that comes from.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Fitting } from '../../shop/schema/fitting-schema.ts';
import { changed } from '../../shop/edits/change.ts';
import type { FittingView } from '../../state/run-editor/fitting-view.ts';
import type { Quantity, UnitSystem } from '../../units/quantity.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import '../sourced-field/sourced-field.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import type { TextEvent } from '../text-field/text-event.ts';
import '../text-field/text-field.ts';
import { fittingRowStyles } from './fitting-row.styles.ts';
import { FITTING_WORDS } from './fitting-words.ts';
import { formStyles } from './form.styles.ts';
import { FittingEvent } from './value-events.ts';

type Gored = Extract<Fitting, { readonly kind: 'gored' }>;

const choices = (values: readonly number[], unit = '') =>
  values.map((value) => ({ value: String(value), words: `${value}${unit}` }));
const PIECES = choices([3, 4, 5]);
const RADII = choices([1, 1.5], ' × diameter');
const ANGLES = choices([30, 45, 60, 90], '°');

/**
 * @element dc-fitting-row
 * @fires dc-fitting - it is to be another, or to go
 */
@customElement('dc-fitting-row')
export class FittingRow extends LitElement {
  static override styles = [baseStyles, buttonStyles, formStyles, fittingRowStyles];

  @property({ attribute: false }) view: FittingView | undefined;
  @property({ attribute: false }) units: UnitSystem = 'us';
  /** Place in the list, from 1, to tell fittings of one kind apart. */
  @property({ type: Number }) place = 1;

  protected override render(): TemplateResult {
    const { view } = this;
    if (!view) return html`${nothing}`;
    const { fitting } = view;
    const words = `${FITTING_WORDS[fitting.kind]}, fitting ${this.place}`;
    return html`<fieldset tabindex="-1">
      <legend>${words}</legend>
      <div class="fields">
        ${this.#shape(fitting)} ${this.#number('How many', 'count', fitting.count ?? 1, [1, 200], (count) => changed(fitting, { count }))}
        <dc-sourced-field
          label="K of each"
          .units=${this.units}
          .figure=${view.coefficient}
          .low=${0}
          .high=${10_000}
          @dc-quantity=${(event: QuantityEvent) => this.#onCoefficient(event, fitting)}
        ></dc-sourced-field>
      </div>
      <div class="buttons">
        <button
          type="button"
          aria-label=${`Remove ${words}`}
          @click=${() => this.#send(undefined)}
        >
          <span>Remove</span>
        </button>
      </div>
    </fieldset>`;
  }

  /** Comes here, so that the next stop is the first field. */
  override focus(): void {
    this.renderRoot.querySelector('fieldset')?.focus();
  }

  #shape(fitting: Fitting): TemplateResult {
    switch (fitting.kind) {
      case 'bend':
        return html`${this.#number('Angle', 'angle', fitting.angle, [1, 180], (angle) => ({ ...fitting, angle }))}
        ${this.#number('Radius over diameter', 'coefficient', fitting.radius, [0.5, 50], (radius) => ({ ...fitting, radius }))}`;
      case 'mitre':
        return this.#number('Angle', 'angle', fitting.angle, [1, 120], (angle) => ({
          ...fitting,
          angle,
        }));
      case 'gored':
        return this.#gored(fitting);
      case 'plain':
        return html`<dc-text-field
          label="What it is"
          optional
          .value=${fitting.name ?? ''}
          @dc-text=${(event: TextEvent) => this.#onName(event, fitting)}
        ></dc-text-field>`;
      default:
        return fitting satisfies never;
    }
  }

  #gored(fitting: Gored): TemplateResult {
    return html`<dc-choice-field
        label="Pieces"
        .choices=${PIECES}
        value=${fitting.pieces}
        @dc-choice=${({ value }: ChoiceEvent) => this.#send({ ...fitting, pieces: Number(value) as Gored['pieces'] }, 'choice')}
      ></dc-choice-field>
      <dc-choice-field
        label="Radius"
        .choices=${RADII}
        value=${fitting.radius}
        @dc-choice=${({ value }: ChoiceEvent) => this.#send({ ...fitting, radius: Number(value) as Gored['radius'] }, 'choice')}
      ></dc-choice-field>
      <dc-choice-field
        label="Angle"
        .choices=${ANGLES}
        value=${fitting.angle}
        @dc-choice=${({ value }: ChoiceEvent) => this.#send({ ...fitting, angle: Number(value) as Gored['angle'] }, 'choice')}
      ></dc-choice-field>`;
  }

  #number(
    label: string,
    quantity: Quantity,
    value: number,
    [low, high]: readonly [number, number],
    next: (value: number) => Fitting,
  ): TemplateResult {
    return html`<dc-quantity-field
      label=${label}
      quantity=${quantity}
      .units=${this.units}
      .value=${value}
      .low=${low}
      .high=${high}
      @dc-quantity=${(event: QuantityEvent) => {
        event.stopPropagation();
        if (event.value !== undefined) this.#send(next(event.value));
      }}
    ></dc-quantity-field>`;
  }

  #onCoefficient(event: QuantityEvent, fitting: Fitting): void {
    event.stopPropagation();
    const { value: coefficient } = event;
    if (fitting.kind !== 'plain') this.#send(changed(fitting, { coefficient }));
    else if (coefficient !== undefined) this.#send({ ...fitting, coefficient });
  }

  #onName(event: TextEvent, fitting: Fitting): void {
    event.stopPropagation();
    this.#send(changed(fitting, { name: event.value }));
  }

  #send(fitting: Fitting | undefined, how?: 'choice'): void {
    this.dispatchEvent(new FittingEvent(fitting, how));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-fitting-row': FittingRow;
  }
}
