// How a section joins its wye: by its angle, the loss then following from the flows, or by a fixed
// coefficient.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { SectionJoin } from '../../shop/schema/section-schema.ts';
import type { JoinView } from '../../state/run-editor/join-view.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { formStyles } from './form.styles.ts';
import { JoinEvent } from './value-events.ts';

type FixedJoin = Extract<SectionJoin, { readonly kind: 'fixed' }>;

const KINDS = [
  { value: 'momentum', words: 'By its angle and the flows' },
  { value: 'fixed', words: 'By a fixed coefficient' },
];
const STREAMS = [
  { value: 'own', words: 'of this pipe' },
  { value: 'combined', words: 'of all the air together' },
];
const BY_ANGLE: SectionJoin = { kind: 'momentum', angle: 45 };
/** The branch factor of shop practice at 45 degrees. */
const FIXED: FixedJoin = { kind: 'fixed', coefficient: 0.28, of: 'own' };

/**
 * @element dc-join-choice
 * @fires dc-join - it is to join otherwise
 */
@customElement('dc-join-choice')
export class JoinChoice extends LitElement {
  static override styles = [baseStyles, buttonStyles, formStyles];

  @property({ attribute: false }) view: JoinView | undefined;
  @property({ attribute: false }) units: UnitSystem = 'us';

  protected override render(): TemplateResult {
    const { view } = this;
    if (!view) return html`${nothing}`;
    const { join } = view;
    return html`<div class="fields">
        <dc-choice-field
          label="How it joins"
          .choices=${KINDS}
          value=${join.kind}
          hint=${`a wye of ${view.inlets} into ${view.into}; all its inlets are reckoned alike`}
          @dc-choice=${({ value }: ChoiceEvent) => this.#onKind(value)}
        ></dc-choice-field>
        ${join.kind === 'momentum' ? this.#angle(join.angle) : this.#fixed(join)}
      </div>
      <p class="source">
        ${join.kind === 'fixed' ? 'entered, in place of the flows · ' : ''}${view.source}
      </p>
      ${
        join.kind === 'fixed'
          ? html`<div class="buttons">
              <button type="button" @click=${() => this.#onKind('momentum')}>
                <span>Put back by angle and flows</span>
              </button>
            </div>`
          : nothing
      }`;
  }

  #angle(angle: number): TemplateResult {
    return html`<dc-quantity-field
      label="Angle, 0 for straight on"
      quantity="angle"
      .units=${this.units}
      .value=${angle}
      .low=${0}
      .high=${90}
      @dc-quantity=${(event: QuantityEvent) => this.#onAngle(event)}
    ></dc-quantity-field>`;
  }

  #fixed(join: FixedJoin): TemplateResult {
    return html`<dc-quantity-field
        label="Coefficient K"
        .units=${this.units}
        .value=${join.coefficient}
        .low=${0}
        .high=${10_000}
        @dc-quantity=${(event: QuantityEvent) => this.#onCoefficient(event, join)}
      ></dc-quantity-field>
      <dc-choice-field
        label="On the velocity pressure"
        .choices=${STREAMS}
        value=${join.of}
        @dc-choice=${({ value }: ChoiceEvent) => this.#send({ ...join, of: value === 'own' ? 'own' : 'combined' }, 'choice')}
      ></dc-choice-field>`;
  }

  #onKind(kind: string): void {
    this.#send(kind === 'fixed' ? FIXED : BY_ANGLE, 'choice');
  }

  #onAngle(event: QuantityEvent): void {
    event.stopPropagation();
    if (event.value !== undefined) this.#send({ kind: 'momentum', angle: event.value });
  }

  #onCoefficient(event: QuantityEvent, join: FixedJoin): void {
    event.stopPropagation();
    if (event.value !== undefined) this.#send({ ...join, coefficient: event.value });
  }

  #send(join: SectionJoin, how?: 'choice'): void {
    this.dispatchEvent(new JoinEvent(join, how));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-join-choice': JoinChoice;
  }
}
