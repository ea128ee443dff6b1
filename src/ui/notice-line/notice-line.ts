// One line to the reader above the page, with a way to take back what it tells of. Never in the way.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Notice } from '../../state/notice.ts';
import { DcEvent } from '../dc-event.ts';
import { ShelfEvent } from '../shop-list/shelf-event.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';

/** Sent when the line is to go. */
export class DismissEvent extends DcEvent {
  static readonly type = 'dc-dismiss';

  constructor() {
    super(DismissEvent.type);
  }
}

/**
 * @element dc-notice-line
 * @fires dc-dismiss - the line is to go
 * @fires dc-shelf - a shop is to be saved as a file
 */
@customElement('dc-notice-line')
export class NoticeLine extends LitElement {
  static override styles = [
    baseStyles,
    buttonStyles,
    css`
      .line {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 0 12px;
        inline-size: fit-content;
        max-inline-size: min(100%, 60rem);
        margin-block: 8px;
        padding-inline: 12px;
        border: 1px solid var(--dc-rule-strong);
        border-inline-start-width: 4px;
        font-size: var(--dc-small);
        line-height: 1.25rem;
      }

      p {
        flex: 1 1 14rem;
        margin: 0;
        padding-block: 12px;
        overflow-wrap: anywhere;
      }

      .actions {
        display: flex;
        flex-wrap: wrap;
        gap: 0 12px;
        margin-inline-start: -6px;
      }

      ul {
        flex-basis: 100%;
        max-block-size: 40vh;
        margin: 0 0 12px;
        padding-inline-start: 16px;
        overflow: auto;
      }

      .place {
        font-weight: 600;
      }

      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) notice: Notice | undefined;

  protected override render(): TemplateResult {
    const { notice } = this;
    return html`<div aria-live="polite" class=${notice ? 'line' : ''}>
      ${notice ? this.#line(notice) : nothing}
    </div>`;
  }

  #line({ text, problems = [], undo, action, save }: Notice): TemplateResult {
    return html`<p>${text}</p>
      <div class="actions">
      ${undo ? button('Undo', undo) : nothing}${action ? button(action.words, action.act) : nothing}
      ${save === undefined ? nothing : button('Save a file', () => this.#onSave(save))}
      ${button('Dismiss', () => this.dispatchEvent(new DismissEvent()))}
      </div>
      ${
        problems.length === 0
          ? nothing
          : html`<ul role="list" tabindex="0" aria-label="What is wrong with the file">
            ${problems.map(
              ({ place, message }) => html`<li><span class="place">${place}</span> ${message}</li>`,
            )}
          </ul>`
      }`;
  }

  #onSave(id: string): void {
    this.dispatchEvent(new ShelfEvent({ kind: 'download', id }));
  }
}

function button(words: string, act: () => void): TemplateResult {
  return html`<button type="button" @click=${act}><span>${words}</span></button>`;
}

declare global {
  interface HTMLElementEventMap {
    'dc-dismiss': DismissEvent;
  }
  interface HTMLElementTagNameMap {
    'dc-notice-line': NoticeLine;
  }
}
