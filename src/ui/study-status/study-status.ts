// How far the answer to a question is, with a way to leave off; why there is none, with a way to ask
// again. Takes up the same room in every state, so that the answer below doesn't jump.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import type { Asked } from '../study-worker/study-controller.ts';
import { StudyWishEvent } from './study-wish-event.ts';

/**
 * @element dc-study-status
 * @fires dc-study-wish - to leave off, or to ask again
 */
@customElement('dc-study-status')
export class StudyStatus extends LitElement {
  static override styles = [
    baseStyles,
    buttonStyles,
    css`
      :host {
        display: block;
        min-block-size: 44px;
      }

      .line {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 0 12px;
        font-size: var(--dc-small);
      }

      .line > span {
        line-height: 2.75rem;
        font-variant-numeric: tabular-nums;
      }

      progress {
        inline-size: min(240px, 40%);
        block-size: 6px;
        accent-color: var(--dc-air);
      }

      .refused {
        color: var(--dc-duct);
        font-weight: 600;
      }

      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) state: Asked = { kind: 'not asked' };

  /** What is worked out, such as "every size of the main". */
  @property() label = '';

  protected override render(): TemplateResult {
    const { state } = this;
    switch (state.kind) {
      case 'not asked':
      case 'answered':
        return html`${nothing}`;
      case 'asking': {
        const part = state.progress && state.progress.done / state.progress.total;
        return html`<div class="line">
          <span>Working out ${this.label}${part === undefined ? '' : `: ${Math.floor(100 * part)}\u2009%`}</span>
          <progress aria-label="Working out ${this.label}" max="1" .value=${part ?? 0}></progress>
          ${this.#button('cancel', 'Leave off')}
        </div>`;
      }
      case 'cancelled':
        return html`<div class="line">
          <span>Left off.</span>${this.#button('again', 'Work it out')}
        </div>`;
      case 'refused':
        return html`<div class="line" role="alert">
          <span class="refused">This can’t be worked out: ${state.reason}.</span>
          ${this.#button('again', 'Try again')}
        </div>`;
      default:
        return state satisfies never;
    }
  }

  #button(wish: 'cancel' | 'again', words: string): TemplateResult {
    return html`<button type="button" aria-label="${words}: ${this.label}" @click=${() => this.dispatchEvent(new StudyWishEvent(wish))}>
      <span>${words}</span>
    </button>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-study-status': StudyStatus;
  }
}
