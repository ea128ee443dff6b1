// A field for an amount with its unit, typed as people write it. It commits when it is left or on
// Enter, and only if the text was changed. What can't be understood stays as it was typed, with the
// reason under it; what can be read in two ways is asked about.

import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { Reading } from '../../units/parse-quantity.ts';
import { type Quantity, type UnitSystem, unitLabel } from '../../units/quantity.ts';
import { readsAsTape } from '../../units/rounding.ts';
import { type UnitName, UNITS } from '../../units/unit.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { fieldStyles } from '../styles/field.styles.ts';
import { QuantityEvent } from './quantity-event.ts';
import { quantityFieldStyles } from './quantity-field.styles.ts';
import { takeReading, textOf, type Typed, typedQuantity } from './typed-quantity.ts';

/** Written with marks, fractions or a minus, which a phone's number pad doesn't have. */
const NEEDS_LETTERS: ReadonlySet<Quantity> = new Set(['length', 'diameter', 'temperature']);

/**
 * @element dc-quantity-field
 * @fires dc-quantity - another amount was typed and understood
 */
@customElement('dc-quantity-field')
export class QuantityField extends LitElement {
  static override shadowRootOptions: ShadowRootInit = {
    ...LitElement.shadowRootOptions,
    delegatesFocus: true,
  };

  static override styles = [baseStyles, buttonStyles, fieldStyles, quantityFieldStyles];

  @property() label = '';

  @property() quantity: Quantity = 'coefficient';

  @property({ attribute: false }) units: UnitSystem = 'us';

  /** The unit that it is written in, where it is not the one that the system shows. */
  @property({ attribute: false }) unit: UnitName | undefined;

  /** The amount in SI, temperature in °C; undefined leaves the field empty. */
  @property({ attribute: false }) value: number | undefined;

  /** Whether the field may be emptied; the event then bears undefined. */
  @property({ type: Boolean }) optional = false;

  /** Least amount allowed, in SI. */
  @property({ attribute: false }) low: number | undefined;

  /** Greatest amount allowed, in SI. */
  @property({ attribute: false }) high: number | undefined;

  /** A line under the field, such as where a default comes from. */
  @property() hint = '';

  /** Shown in an empty field: what holds then. */
  @property() placeholder = '';

  /** Why whoever holds the amount refused what was typed last; stays under the field. */
  @property() problem = '';

  /** Whether the label is for ears only, where a heading of a table says it for eyes. */
  @property({ type: Boolean }) bare = false;

  @state() private draft: string | undefined;

  @state() private outcome: Typed = { kind: 'same' };

  /** Whether something stands in the field that was not understood, or is still asked about. */
  get isUnsettled(): boolean {
    return this.outcome.kind === 'refused' || this.outcome.kind === 'question';
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('value')) this.#settle();
    else if ((changed.has('units') || changed.has('unit')) && this.outcome.kind !== 'refused')
      this.#settle();
  }

  protected override render(): TemplateResult {
    const complaint = this.outcome.kind === 'refused' ? this.outcome.message : this.problem;
    const text = this.draft ?? textOf(this);
    return html`<div class="field">
      <label for="amount" class=${this.bare ? 'for-ears' : ''}>${this.label}</label>
      <div class="box">
        <div class="room">
          <input
            id="amount"
            type="text"
            inputmode=${NEEDS_LETTERS.has(this.quantity) ? 'text' : 'decimal'}
            enterkeyhint="done"
            autocomplete="off"
            spellcheck="false"
            placeholder=${this.placeholder || nothing}
            .value=${live(text)}
            aria-invalid=${complaint === '' ? nothing : 'true'}
            aria-describedby="unit notes"
            @input=${(event: InputEvent) => this.#onInput(event)}
            @change=${() => this.#onChange()}
            @keydown=${(event: KeyboardEvent) => this.#onKey(event)}
          />
        </div>
        <span class="suffix" id="unit" ?hidden=${this.#suffix(text) === ''}>${this.#suffix(text)}</span>
      </div>
      <div id="notes">
        ${complaint === '' ? nothing : html`<p class="problem" role="alert">${complaint}</p>`}
        ${this.#echo === '' ? nothing : html`<p class="hint">understood: ${this.#echo}</p>`}
        ${this.hint === '' ? nothing : html`<p class="hint">${this.hint}</p>`}
      </div>
      ${this.outcome.kind === 'question' ? this.#question(text, this.outcome.readings) : nothing}
    </div>`;
  }

  get #echo(): string {
    return this.outcome.kind === 'other' ? this.outcome.echo : '';
  }

  /** A length on the tape bears its own marks; a plain number is taken in this unit. */
  #suffix(text: string): string {
    if (this.unit) return UNITS[this.unit].label;
    const marked = readsAsTape(this.quantity, this.units) && /['"]/.test(text);
    return marked ? '' : unitLabel(this.quantity, this.units);
  }

  #question(text: string, readings: readonly Reading[]): TemplateResult {
    return html`<div class="question" role="group" aria-label=${`Which is meant by ${text}`}>
      <span class="problem" role="alert">“${text}” can be read in two ways:</span>
      ${readings.map(
        (
          reading,
        ) => html`<button type="button" @click=${() => this.#take(takeReading(this, reading))}>
          <span>${reading.echo}</span>
        </button>`,
      )}
    </div>`;
  }

  #onInput(event: InputEvent): void {
    this.draft = (event.currentTarget as HTMLInputElement).value;
  }

  #onChange(): void {
    if (this.draft !== undefined) this.#take(typedQuantity(this, this.draft));
  }

  #onKey(event: KeyboardEvent): void {
    if (event.key !== 'Escape' || this.draft === undefined) return;
    event.stopPropagation();
    this.#settle();
  }

  #take(typed: Typed): void {
    if (typed.kind === 'same') {
      this.#settle();
      return;
    }
    this.outcome = typed;
    if (typed.kind === 'other') this.dispatchEvent(new QuantityEvent(typed.value));
  }

  /** Shows the amount held; an echo of what was typed stays as long as it belongs to it. */
  #settle(): void {
    this.draft = undefined;
    const belongs = this.outcome.kind === 'other' && this.outcome.value === this.value;
    if (!belongs) this.outcome = { kind: 'same' };
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-quantity-field': QuantityField;
  }
}
