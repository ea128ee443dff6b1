// What the air of a drop enters through: a hood of the table, a coefficient, or a reading taken on
// the machine. A reading is a pair: it is taken over once suction and speed fit each other.

import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { HOODS } from '../../duct/hood.ts';
import { hoodLoss } from '../../shop/hood-loss.ts';
import type { Hood } from '../../shop/schema/drop-schema.ts';
import type { DropFormView } from '../../state/run-editor/drop-form-view.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { fieldStyles } from '../styles/field.styles.ts';
import { formStyles } from './form.styles.ts';
import { HoodEvent } from './value-events.ts';

const COEFFICIENT = 'coefficient';
const MEASURED = 'measured';
const CHOICES = [
  ...HOODS.map(({ id, name }) => ({
    value: `table ${id}`,
    words: name.charAt(0).toUpperCase() + name.slice(1),
    group: 'Of the table',
  })),
  { value: COEFFICIENT, words: 'A coefficient of your own', group: 'Your own' },
  { value: MEASURED, words: 'Measured on the machine', group: 'Your own' },
];

/** A reading of which one half may not have been typed yet. */
interface Reading {
  readonly suction: number | undefined;
  readonly velocity: number | undefined;
}

/**
 * @element dc-hood-choice
 * @fires dc-hood - it is to be another
 */
@customElement('dc-hood-choice')
export class HoodChoice extends LitElement {
  static override styles = [baseStyles, fieldStyles, formStyles];

  @property({ attribute: false }) view: DropFormView | undefined;
  @property({ attribute: false }) units: UnitSystem = 'us';

  /** A reading that is being typed; undefined where none is. */
  @state() private reading: Reading | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    const before = changed.get('view');
    if (before && before.drop.hood !== this.view?.drop.hood) this.reading = undefined;
  }

  protected override render(): TemplateResult {
    const { view } = this;
    if (!view) return html`${nothing}`;
    const { hood } = view.drop;
    const reading = this.reading ?? (hood.kind === 'measured' ? hood : undefined);
    const kind = reading ? MEASURED : hood.kind === 'table' ? `table ${hood.id}` : COEFFICIENT;
    return html`<div class="fields">
        <dc-choice-field
          label="Hood"
          .choices=${CHOICES}
          value=${kind}
          @dc-choice=${({ value }: ChoiceEvent) => this.#onKind(value)}
        ></dc-choice-field>
        ${reading ? this.#readingFields(reading) : nothing}
        ${!reading && hood.kind === 'coefficient' ? this.#ownCoefficient(hood.coefficient) : nothing}
      </div>
      ${this.reading ? this.#waiting(this.reading, view.density) : this.#loss(view)}`;
  }

  #loss({ entryLoss, hoodSource }: DropFormView): TemplateResult {
    const loss = entryLoss === undefined ? '' : this.#show('coefficient', entryLoss);
    return html`<p class="source"><b>K ${loss}</b> on entry · ${hoodSource}</p>`;
  }

  #waiting(reading: Reading, density: number): TemplateResult {
    const problem = problemOf(reading, density, (quantity, si) => this.#show(quantity, si));
    return problem === undefined
      ? html`<p class="hint">The hood stays as it was until suction and speed are both typed.</p>`
      : html`<p class="problem" role="alert">${problem}</p>`;
  }

  #ownCoefficient(coefficient: number): TemplateResult {
    return html`<dc-quantity-field
      label="K on entry"
      .units=${this.units}
      .value=${coefficient}
      .low=${0}
      .high=${10_000}
      @dc-quantity=${(event: QuantityEvent) => this.#onCoefficient(event)}
    ></dc-quantity-field>`;
  }

  #readingFields({ suction, velocity }: Reading): TemplateResult {
    return html`<dc-quantity-field
        label="Suction behind the hood"
        quantity="pressure"
        .units=${this.units}
        .value=${suction}
        .low=${0}
        .high=${50_000}
        @dc-quantity=${(event: QuantityEvent) => this.#onReading(event, { velocity, suction: event.value })}
      ></dc-quantity-field>
      <dc-quantity-field
        label="Speed there at the same time"
        quantity="velocity"
        .units=${this.units}
        .value=${velocity}
        .low=${0.1}
        .high=${200}
        @dc-quantity=${(event: QuantityEvent) => this.#onReading(event, { suction, velocity: event.value })}
      ></dc-quantity-field>`;
  }

  #onKind(kind: string): void {
    this.reading = undefined;
    if (kind === MEASURED) this.reading = { suction: undefined, velocity: undefined };
    else if (kind === COEFFICIENT) this.#send({ kind, coefficient: this.#roundedLoss() }, 'choice');
    else this.#send({ kind: 'table', id: kind.replace('table ', '') }, 'choice');
  }

  /** The present entry loss to begin from, as it is shown. */
  #roundedLoss(): number {
    return Number((this.view?.entryLoss ?? 1).toFixed(3));
  }

  #onCoefficient(event: QuantityEvent): void {
    event.stopPropagation();
    if (event.value !== undefined) this.#send({ kind: COEFFICIENT, coefficient: event.value });
  }

  #onReading(event: QuantityEvent, reading: Reading): void {
    event.stopPropagation();
    const density = this.view?.density ?? 1.2;
    const hood = asHood(reading);
    if (hood && hoodLoss(hood, density).kind === 'found') {
      this.reading = undefined;
      this.#send(hood);
    } else {
      this.reading = reading;
    }
  }

  #show(quantity: 'coefficient' | 'pressure' | 'velocity', si: number): string {
    return formatQuantity(quantity, this.units, si).text;
  }

  #send(hood: Hood, how?: 'choice'): void {
    this.dispatchEvent(new HoodEvent(hood, how));
  }
}

function asHood({ suction, velocity }: Reading): Hood | undefined {
  if (suction === undefined || velocity === undefined) return undefined;
  return { kind: MEASURED, suction, velocity };
}

function problemOf(
  reading: Reading,
  density: number,
  show: (quantity: 'pressure' | 'velocity', si: number) => string,
): string | undefined {
  const hood = asHood(reading);
  const loss = hood && hoodLoss(hood, density);
  if (hood?.kind !== MEASURED || loss?.kind !== 'below velocity pressure') return undefined;
  const least = show('pressure', loss.velocityPressure);
  return (
    `${show('pressure', hood.suction)} can’t be: at ${show('velocity', hood.velocity)} the moving ` +
    `air alone shows ${least}. One of the two readings is wrong; the hood stays as it was.`
  );
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-hood-choice': HoodChoice;
  }
}
