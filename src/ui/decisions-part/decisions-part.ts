// The questions that a reader may ask of the shop, each folded to one line until it is wanted, and the
// variants that were kept of it.

import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { ShopVariant } from '../../state/decisions/family.ts';
import '../folded-part/folded-part.ts';
import { baseStyles } from '../styles/base.styles.ts';

/** @element dc-decisions-part */
@customElement('dc-decisions-part')
export class DecisionsPart extends LitElement {
  static override styles = [
    baseStyles,
    css`
      :host {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 8px;
      }
    `,
  ];

  /** The shops of this one's family, itself among them. */
  @property({ attribute: false }) variants: readonly ShopVariant[] = [];

  protected override render(): TemplateResult {
    const others = this.variants.length - 1;
    return html`<dc-folded-part
        heading="Can it reach further?"
        figures="how much longer a run may be, or a new drop"
        @dc-unfold=${() => void import('../reach-panel/reach-panel.ts')}
      >
        <dc-reach-panel></dc-reach-panel>
      </dc-folded-part>
      <dc-folded-part
        heading="Would a larger main help?"
        figures="every size, what it gains and what settles"
        @dc-unfold=${() => void import('../main-panel/main-panel.ts')}
      >
        <dc-main-panel></dc-main-panel>
      </dc-folded-part>
      <dc-folded-part
        heading="Which collector?"
        figures="any of them on these ducts"
        @dc-unfold=${() => void import('../collectors-panel/collectors-panel.ts')}
      >
        <dc-collectors-panel></dc-collectors-panel>
      </dc-folded-part>
      <dc-folded-part
        heading="Variants"
        figures=${others < 1 ? 'none kept yet' : `${others} beside this shop`}
        @dc-unfold=${() => void import('../variants-panel/variants-panel.ts')}
      >
        <dc-variants-panel .variants=${this.variants}></dc-variants-panel>
      </dc-folded-part>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-decisions-part': DecisionsPart;
  }
}
