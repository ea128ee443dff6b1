// A change of diameter: the cone that was put in by itself, another, a step, or a coefficient.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Transition } from '../../shop/schema/section-schema.ts';
import { type ReducerView, USUAL_CONE } from '../../state/run-editor/reducer-view.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { formStyles } from './form.styles.ts';
import { ReducerEvent } from './value-events.ts';

const USUAL = 'usual';
const CHOICES = [
  { value: USUAL, words: `${USUAL_CONE}° cone, put in by itself` },
  { value: 'taper', words: 'A cone of another angle' },
  { value: 'sudden', words: 'A step' },
  { value: 'plain', words: 'A coefficient of your own' },
];

/**
 * @element dc-reducer-choice
 * @fires dc-reducer - it is to be another; undefined for the cone put in by itself
 */
@customElement('dc-reducer-choice')
export class ReducerChoice extends LitElement {
  static override styles = [baseStyles, buttonStyles, formStyles];

  @property({ attribute: false }) view: ReducerView | undefined;
  @property({ attribute: false }) units: UnitSystem = 'us';

  protected override render(): TemplateResult {
    const { view } = this;
    if (!view) return html`${nothing}`;
    const { transition } = view;
    const loss = formatQuantity('coefficient', this.units, view.coefficient).text;
    return html`<div class="fields">
        <dc-choice-field
          label=${`Reducer, ${view.sizes}`}
          .choices=${CHOICES}
          value=${transition?.kind ?? USUAL}
          @dc-choice=${({ value }: ChoiceEvent) => this.#onKind(value)}
        ></dc-choice-field>
        ${transition ? this.#figure(transition) : nothing}
      </div>
      <p class="source">
        <b>K ${loss}</b> on the smaller pipe · ${transition ? 'entered, in place of the usual cone · ' : ''}${view.source}
      </p>
      ${
        transition
          ? html`<div class="buttons">
              <button type="button" @click=${() => this.#send(undefined)}>
                <span>Put back the ${USUAL_CONE}° cone</span>
              </button>
            </div>`
          : nothing
      }`;
  }

  #figure(transition: Transition): TemplateResult | typeof nothing {
    if (transition.kind === 'taper') {
      return html`<dc-quantity-field
        label="Angle between its sides"
        quantity="angle"
        .units=${this.units}
        .value=${transition.angle}
        .low=${1}
        .high=${180}
        @dc-quantity=${(event: QuantityEvent) => this.#onAngle(event)}
      ></dc-quantity-field>`;
    }
    if (transition.kind === 'sudden') return nothing;
    return html`<dc-quantity-field
      label="K on the smaller pipe"
      .units=${this.units}
      .value=${transition.coefficient}
      .low=${0}
      .high=${10_000}
      @dc-quantity=${(event: QuantityEvent) => this.#onCoefficient(event)}
    ></dc-quantity-field>`;
  }

  #onKind(kind: string): void {
    if (kind === 'sudden') this.#send({ kind }, 'choice');
    else if (kind === 'taper') this.#send({ kind, angle: USUAL_CONE }, 'choice');
    else if (kind === 'plain')
      this.#send({ kind, coefficient: this.view?.coefficient ?? 0 }, 'choice');
    else this.#send(undefined, 'choice');
  }

  #onAngle(event: QuantityEvent): void {
    event.stopPropagation();
    if (event.value !== undefined) this.#send({ kind: 'taper', angle: event.value });
  }

  #onCoefficient(event: QuantityEvent): void {
    event.stopPropagation();
    if (event.value !== undefined) this.#send({ kind: 'plain', coefficient: event.value });
  }

  #send(transition: Transition | undefined, how?: 'choice'): void {
    this.dispatchEvent(new ReducerEvent(transition, how));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-reducer-choice': ReducerChoice;
  }
}
