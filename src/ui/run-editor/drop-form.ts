// Everything that can be said of one drop.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { type ShopEdit, changed } from '../../shop/edits/change.ts';
import { noteOnDrop, setGate, setHood, setNeed, setPort } from '../../shop/edits/edit-drop.ts';
import { nameDrop } from '../../shop/edits/name-drop.ts';
import { MACHINES } from '../../shop/machine-flow.ts';
import type { Gate } from '../../shop/schema/drop-schema.ts';
import type { DropFormView } from '../../state/run-editor/drop-form-view.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../sourced-field/sourced-field.ts';
import { baseStyles } from '../styles/base.styles.ts';
import type { TextEvent } from '../text-field/text-event.ts';
import '../text-field/text-field.ts';
import { formStyles } from './form.styles.ts';
import './hood-choice.ts';
import './reducer-choice.ts';
import { ShopEditEvent } from './shop-edit-event.ts';
import type { HoodEvent, ReducerEvent } from './value-events.ts';

const sentenceStart = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

const NO_MACHINE = '';
const MACHINE_CHOICES = [
  { value: NO_MACHINE, words: 'None of the table' },
  ...MACHINES.map(({ id, name, source }) => ({
    value: id,
    words: sentenceStart(name),
    group:
      source.status === 'verified' ? source.citation.split(',')[0]! : sentenceStart(source.status),
  })),
];

/**
 * @element dc-drop-form
 * @fires dc-shop-edit - something of it is to be changed
 */
@customElement('dc-drop-form')
export class DropForm extends LitElement {
  static override styles = [baseStyles, formStyles];

  @property({ attribute: false }) view: DropFormView | undefined;
  @property({ attribute: false }) units: UnitSystem = 'us';

  protected override render(): TemplateResult {
    const { view, units } = this;
    if (!view) return html`${nothing}`;
    const { drop } = view;
    const { id } = drop;
    return html`<h4>Machine</h4>
      <div class="fields">
        <dc-text-field
          label="Name"
          .value=${drop.name}
          @dc-text=${({ value }: TextEvent) => value !== undefined && this.#ask(nameDrop(id, value))}
        ></dc-text-field>
        <dc-choice-field
          label="Machine of the table"
          .choices=${MACHINE_CHOICES}
          value=${drop.machine ?? NO_MACHINE}
          @dc-choice=${({ value }: ChoiceEvent) => this.#ask(setNeed(id, drop.need, value === NO_MACHINE ? undefined : value), `machine of ${id}`)}
        ></dc-choice-field>
        <dc-sourced-field
          label="Air it needs"
          quantity="flow"
          optional
          .units=${units}
          .figure=${view.need}
          .low=${0}
          .high=${100}
          @dc-quantity=${({ value }: QuantityEvent) => this.#ask(setNeed(id, value, drop.machine))}
        ></dc-sourced-field>
      </div>
      <h4>Hood and port</h4>
      <dc-hood-choice
        .view=${view}
        .units=${units}
        @dc-hood=${({ hood, isChoice }: HoodEvent) => this.#ask(setHood(id, hood), isChoice ? `hood of ${id}` : undefined)}
      ></dc-hood-choice>
      <div class="fields">
        <dc-sourced-field
          label="Port, inside diameter"
          quantity="diameter"
          .units=${units}
          .figure=${view.port}
          .low=${0.01}
          .high=${2}
          @dc-quantity=${({ value }: QuantityEvent) => this.#ask(setPort(id, value, drop.transition))}
        ></dc-sourced-field>
        ${
          view.reducer
            ? html`<dc-reducer-choice
                .view=${view.reducer}
                .units=${units}
                @dc-reducer=${({ transition, isChoice }: ReducerEvent) => this.#ask(setPort(id, drop.port, transition), isChoice ? `reducer at ${id}` : undefined)}
              ></dc-reducer-choice>`
            : nothing
        }
      </div>
      <h4>Gate</h4>
      ${this.#gate(view)}
      <h4>Remark</h4>
      <dc-text-field
        label="Note"
        optional
        lines
        .value=${drop.note ?? ''}
        @dc-text=${({ value }: TextEvent) => this.#ask(noteOnDrop(id, value))}
      ></dc-text-field>`;
  }

  #gate({ drop, leak, slotLoss }: DropFormView): TemplateResult {
    const { id, gate } = drop;
    return html`<label class="check"
        ><input
          type="checkbox"
          .checked=${gate !== undefined}
          @change=${(event: Event) => this.#ask(setGate(id, isChecked(event) ? { travel: 1 } : undefined))}
        />Has a gate; without one it is always open</label
      >
      ${gate ? this.#gateFigures(gate, leak, slotLoss) : nothing}`;
  }

  #gateFigures(
    gate: Gate,
    leak: DropFormView['leak'],
    slotLoss: DropFormView['slotLoss'],
  ): TemplateResult {
    return html`<div class="fields">
      <dc-sourced-field
        label="Leak when shut"
        quantity="fraction"
        .units=${this.units}
        .figure=${leak}
        .low=${1e-5}
        .high=${0.5}
        @dc-quantity=${({ value }: QuantityEvent) => this.#askGate(changed(gate, { leak: value }))}
      ></dc-sourced-field>
      <dc-sourced-field
        label="K of the open slot"
        .units=${this.units}
        .figure=${slotLoss}
        .low=${0}
        .high=${100}
        @dc-quantity=${({ value }: QuantityEvent) => this.#askGate(changed(gate, { slotLoss: value }))}
      ></dc-sourced-field>
    </div>`;
  }

  #askGate(gate: Gate): void {
    if (this.view) this.#ask(setGate(this.view.drop.id, gate));
  }

  #ask(edit: ShopEdit, mergeKey?: string): void {
    this.dispatchEvent(new ShopEditEvent(edit, mergeKey));
  }
}

function isChecked(event: Event): boolean {
  return (event.currentTarget as HTMLInputElement).checked;
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-drop-form': DropForm;
  }
}
