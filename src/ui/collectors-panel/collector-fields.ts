// Which collectors are set side by side: that of the shop, the reader's own, the examples.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { type Candidate, ORIGIN_WORDS } from '../../state/decisions/candidates.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { checkListStyles } from '../styles/check-list.styles.ts';
import { panelFormStyles } from '../styles/panel-form.styles.ts';
import { CandidatesEvent } from './candidates-event.ts';

/**
 * @element dc-collector-fields
 * @fires dc-candidates - others are to be compared
 */
@customElement('dc-collector-fields')
export class CollectorFields extends LitElement {
  static override styles = [
    baseStyles,
    panelFormStyles,
    checkListStyles,
    css`
      .whose {
        display: block;
        margin: 0;
      }

      p.whose {
        margin-block-start: 12px;
      }
    `,
  ];

  @property({ attribute: false }) candidates: readonly Candidate[] = [];
  /** Keys of those that are left out. */
  @property({ attribute: false }) left: readonly string[] = [];
  /** Why some of the reader's own may not be among them; empty where all are. */
  @property() missing = '';

  protected override render(): TemplateResult {
    const hasOwn = this.candidates.some(({ origin }) => origin === 'own');
    return html`<div class="group">
      <fieldset>
        <legend>Collectors to compare</legend>
        <div class="ticks">
          ${this.candidates.map(
            ({ key, name, origin }) => html`<label>
              <input
                type="checkbox"
                .checked=${live(!this.left.includes(key))}
                @change=${() => this.#toggle(key)}
              />
              <span>${name} <span class="aside whose">${ORIGIN_WORDS[origin]}</span></span>
            </label>`,
          )}
        </div>
        ${
          hasOwn
            ? nothing
            : html`<p class="aside whose">
              ${this.missing || 'Curves that you keep on the shelf of curves, at “Collector”, come here too.'}
            </p>`
        }
      </fieldset>
    </div>`;
  }

  #toggle(key: string): void {
    const left = this.left.includes(key)
      ? this.left.filter((each) => each !== key)
      : [...this.left, key];
    this.dispatchEvent(new CandidatesEvent(left));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-collector-fields': CollectorFields;
  }
}
