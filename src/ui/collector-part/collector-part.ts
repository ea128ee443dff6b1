// The part of the page where the collector is entered, folded to one line of its figures.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import { collectorFigures } from '../../state/collector/collector-figures.ts';
import '../folded-part/folded-part.ts';
import { SessionController } from '../session-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';

/** @element dc-collector-part */
@customElement('dc-collector-part')
export class CollectorPart extends LitElement {
  static override styles = baseStyles;

  readonly #figures = new SessionController(
    this,
    ({ shop, units }) => collectorFigures(shop.value.collector, units.value),
    { turn: 0 },
  );

  protected override render(): TemplateResult {
    const figures = this.#figures.value;
    if (figures === undefined) return html`${nothing}`;
    return html`<dc-folded-part
      heading="Collector"
      figures=${figures}
      @dc-unfold=${() => void import('../collector-panel/collector-panel.ts')}
    >
      <dc-collector-panel></dc-collector-panel>
    </dc-folded-part>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-collector-part': CollectorPart;
  }
}
