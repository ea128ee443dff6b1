// Which collectors are set side by side, and which gates are open in the picture.

import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { Candidate } from '../../state/decisions/candidates.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import type { Choice } from '../choice-field/choice-field.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { panelFormStyles } from '../styles/panel-form.styles.ts';
import { CandidatesEvent } from './candidates-event.ts';

/**
 * @element dc-collector-fields
 * @fires dc-candidates - others are to be compared, or with other gates
 */
@customElement('dc-collector-fields')
export class CollectorFields extends LitElement {
  static override styles = [
    baseStyles,
    panelFormStyles,
    css`
      fieldset {
        min-inline-size: 0;
        margin: 0 0 12px;
        padding: 0;
        border: 0;
      }

      legend {
        padding: 0;
        color: var(--dc-ink-soft);
        font-size: var(--dc-small);
        line-height: 1.125rem;
      }

      .candidates {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(100%, 320px), 1fr));
        gap: 0 24px;
      }

      label {
        display: flex;
        align-items: center;
        gap: 10px;
        min-block-size: 44px;
      }

      input {
        flex: none;
        inline-size: 20px;
        block-size: 20px;
        margin: 2px;
        accent-color: var(--dc-air);
      }

      .today {
        color: var(--dc-ink-soft);
        font-size: var(--dc-small);
      }
    `,
  ];

  @property({ attribute: false }) candidates: readonly Candidate[] = [];
  /** Names of those that are left out. */
  @property({ attribute: false }) left: readonly string[] = [];
  /** States of the gates to choose from. */
  @property({ attribute: false }) states: readonly Choice[] = [];
  @property() state = '';

  protected override render(): TemplateResult {
    return html`<div class="group">
      <fieldset>
        <legend>Collectors to compare</legend>
        <div class="candidates">
          ${this.candidates.map(
            ({ name, isToday }) => html`<label>
              <input
                type="checkbox"
                .checked=${live(!this.left.includes(name))}
                @change=${() => this.#toggle(name)}
              />
              <span>${name}${isToday ? html` <span class="today">today</span>` : ''}</span>
            </label>`,
          )}
        </div>
      </fieldset>
      <div class="fields">
        <dc-choice-field
          class="long"
          label="Open in the picture"
          .choices=${this.states}
          .value=${this.state}
          @dc-choice=${({ value }: ChoiceEvent) => this.dispatchEvent(new CandidatesEvent(this.left, value))}
        ></dc-choice-field>
      </div>
    </div>`;
  }

  #toggle(name: string): void {
    const left = this.left.includes(name)
      ? this.left.filter((each) => each !== name)
      : [...this.left, name];
    this.dispatchEvent(new CandidatesEvent(left, this.state));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-collector-fields': CollectorFields;
  }
}
