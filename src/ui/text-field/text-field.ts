// A field for words: one line for a name, several for a note. It commits when it is left.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { baseStyles } from '../styles/base.styles.ts';
import { fieldStyles } from '../styles/field.styles.ts';
import { TextEvent } from './text-event.ts';

/** As many characters as the document takes in a name, and in a note. */
const LONGEST = { line: 200, lines: 10_000 } as const;

/**
 * @element dc-text-field
 * @fires dc-text - it was left with another text
 */
@customElement('dc-text-field')
export class TextField extends LitElement {
  static override shadowRootOptions: ShadowRootInit = {
    ...LitElement.shadowRootOptions,
    delegatesFocus: true,
  };

  static override styles = [
    baseStyles,
    fieldStyles,
    css`
      textarea {
        inline-size: 100%;
        min-block-size: 4rem;
        padding: 8px;
        border: 1px solid var(--dc-rule-strong);
        border-radius: 2px;
        background: var(--dc-paper);
        color: inherit;
        font: inherit;
        resize: vertical;
      }
    `,
  ];

  @property() label = '';
  @property() value = '';

  /** Whether it may be emptied. */
  @property({ type: Boolean }) optional = false;

  /** Whether it takes several lines. */
  @property({ type: Boolean }) lines = false;

  /** A line under the field. */
  @property() hint = '';

  @state() private problem = '';

  protected override render(): TemplateResult {
    const input = this.lines
      ? html`<textarea
          id="text"
          rows="2"
          maxlength=${LONGEST.lines}
          .value=${live(this.value)}
          aria-describedby="notes"
          @change=${(event: Event) => this.#onChange(event)}
        ></textarea>`
      : html`<input
          id="text"
          class="line"
          type="text"
          maxlength=${LONGEST.line}
          autocomplete="off"
          enterkeyhint="done"
          .value=${live(this.value)}
          aria-invalid=${this.problem === '' ? nothing : 'true'}
          aria-describedby="notes"
          @change=${(event: Event) => this.#onChange(event)}
        />`;
    return html`<div class="field">
      <label for="text">${this.label}</label>
      ${input}
      <div id="notes">
        ${this.problem === '' ? nothing : html`<p class="problem" role="alert">${this.problem}</p>`}
        ${this.hint === '' ? nothing : html`<p class="hint">${this.hint}</p>`}
      </div>
    </div>`;
  }

  #onChange(event: Event): void {
    event.stopPropagation();
    const { value } = event.currentTarget as HTMLInputElement | HTMLTextAreaElement;
    const text = this.lines ? value.trim() : value.replace(/\p{Cc}/gu, ' ').trim();
    const isMissing = text === '' && !this.optional;
    this.problem = isMissing ? `A name is needed; “${this.value}” stays until there is one.` : '';
    if (isMissing || text === this.value) this.requestUpdate();
    else this.dispatchEvent(new TextEvent(text === '' ? undefined : text));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-text-field': TextField;
  }
}
