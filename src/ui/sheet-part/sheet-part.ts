// The part of the page with the cut list and the command that prints the shop, folded until wanted.

import { html, LitElement, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import '../folded-part/folded-part.ts';
import { baseStyles } from '../styles/base.styles.ts';

/** @element dc-sheet-part */
@customElement('dc-sheet-part')
export class SheetPart extends LitElement {
  static override styles = baseStyles;

  protected override render(): TemplateResult {
    return html`<dc-folded-part
      heading="Shop sheet and cut list"
      @dc-unfold=${() => void import('../cut-list-panel/cut-list-panel.ts')}
    >
      <dc-cut-list-panel></dc-cut-list-panel>
    </dc-folded-part>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-sheet-part': SheetPart;
  }
}
