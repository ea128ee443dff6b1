// The part of the page with the air, the filter's state and the carrying range, folded to one line.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import { conditionsFigures } from '../../state/conditions-figures.ts';
import '../folded-part/folded-part.ts';
import { SessionController } from '../session-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';

/** @element dc-conditions-part */
@customElement('dc-conditions-part')
export class ConditionsPart extends LitElement {
  static override styles = baseStyles;

  readonly #figures = new SessionController(
    this,
    ({ shop, units }) => conditionsFigures(shop.value, units.value),
    { turn: 1 },
  );

  protected override render(): TemplateResult {
    const figures = this.#figures.value;
    if (figures === undefined) return html`${nothing}`;
    return html`<dc-folded-part
      heading="Air, filter and range"
      figures=${figures}
      @dc-unfold=${() => void import('../conditions-panel/conditions-panel.ts')}
    >
      <dc-conditions-panel></dc-conditions-panel>
    </dc-folded-part>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-conditions-part': ConditionsPart;
  }
}
