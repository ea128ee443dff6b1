// A part of the page that is typed once and rarely touched: a heading, one line of its figures that
// stays visible, and the rest folded away until it is wanted.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { baseStyles } from '../styles/base.styles.ts';
import { UnfoldEvent } from './unfold-event.ts';

/**
 * @element dc-folded-part
 * @fires dc-unfold - it was unfolded for the first time
 * @slot - what is folded away
 */
@customElement('dc-folded-part')
export class FoldedPart extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: block;
        min-inline-size: 0;
      }

      h2 {
        display: inline;
        margin: 0;
        font-size: var(--dc-text);
        font-weight: 600;
      }

      .figures {
        margin-inline-start: 12px;
        color: var(--dc-ink-soft);
        font-size: var(--dc-small);
        font-variant-numeric: tabular-nums;
      }

      @media print {
        summary {
          min-block-size: 0;
          padding-block: 4px;
          list-style: none;
        }
      }

      .body {
        padding-block: 4px 16px;
      }
    `,
  ];

  @property() heading = '';

  /** One line of figures, visible also while it is folded. */
  @property() figures = '';

  #wasUnfolded = false;

  protected override render(): TemplateResult {
    return html`<section aria-label=${this.heading}>
      <details @toggle=${(event: ToggleEvent) => this.#onToggle(event)}>
        <summary>
          <h2>${this.heading}</h2>
          ${this.figures === '' ? nothing : html`<span class="figures">${this.figures}</span>`}
        </summary>
        <div class="body"><slot></slot></div>
      </details>
    </section>`;
  }

  #onToggle(event: ToggleEvent): void {
    if (this.#wasUnfolded || event.newState !== 'open') return;
    this.#wasUnfolded = true;
    this.dispatchEvent(new UnfoldEvent());
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-folded-part': FoldedPart;
  }
}
