// A choice of one among several, as the browser's own list, with its label above it.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { baseStyles } from '../styles/base.styles.ts';
import { fieldStyles } from '../styles/field.styles.ts';
import { ChoiceEvent } from './choice-event.ts';

/** One entry; entries of a group that follow one another stand under its heading. */
export interface Choice {
  readonly value: string;
  readonly words: string;
  readonly group?: string;
}

/**
 * @element dc-choice-field
 * @fires dc-choice - another entry was chosen
 */
@customElement('dc-choice-field')
export class ChoiceField extends LitElement {
  static override shadowRootOptions: ShadowRootInit = {
    ...LitElement.shadowRootOptions,
    delegatesFocus: true,
  };

  static override styles = [baseStyles, fieldStyles];

  @property() label = '';
  @property({ attribute: false }) choices: readonly Choice[] = [];
  @property() value = '';

  /** A line under the choice. */
  @property() hint = '';

  protected override render(): TemplateResult {
    return html`<div class="field">
      <label for="choice">${this.label}</label>
      <select
        id="choice"
        aria-describedby=${this.hint === '' ? nothing : 'hint'}
        @change=${(event: Event) => this.#onChange(event)}
      >
        ${grouped(this.choices).map(([heading, choices]) => {
          const options = choices.map(
            ({ value, words }) =>
              html`<option value=${value} .selected=${live(value === this.value)}>${words}</option>`,
          );
          return heading === '' ? options : html`<optgroup label=${heading}>${options}</optgroup>`;
        })}
      </select>
      ${this.hint === '' ? nothing : html`<p class="hint" id="hint">${this.hint}</p>`}
    </div>`;
  }

  #onChange(event: Event): void {
    event.stopPropagation();
    this.dispatchEvent(new ChoiceEvent((event.currentTarget as HTMLSelectElement).value));
  }
}

/** Entries by their headings, in order. */
function grouped(choices: readonly Choice[]): [string, Choice[]][] {
  const groups: [string, Choice[]][] = [];
  for (const choice of choices) {
    const heading = choice.group ?? '';
    const last = groups.at(-1);
    if (last?.[0] === heading) last[1].push(choice);
    else groups.push([heading, [choice]]);
  }
  return groups;
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-choice-field': ChoiceField;
  }
}
