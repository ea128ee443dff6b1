// What the answer rests on, folded until wanted: every figure with where it comes from.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import type { PlotTable } from '../../plot/plot-table.ts';
import type { Assumption, AssumptionGroup } from '../../state/assumptions/assumption.ts';
import { ASSUMPTION_COLUMNS, assumptionRows } from '../../state/assumptions/assumption-table.ts';
import { assumptions } from '../../state/assumptions/assumptions.ts';
import '../folded-part/folded-part.ts';
import { SessionController } from '../session-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { assumptionsPanelStyles } from './assumptions-panel.styles.ts';

/** @element dc-assumptions-panel */
@customElement('dc-assumptions-panel')
export class AssumptionsPanel extends LitElement {
  static override styles = [baseStyles, assumptionsPanelStyles];

  readonly #session = new SessionController(
    this,
    ({ shop, model, units }) => assumptions(shop.value, model.value.air, units.value),
    'when seen',
  );

  protected override render(): TemplateResult {
    const groups = this.#session.value;
    if (!groups) return html`${nothing}`;
    return html`<dc-folded-part
      heading="What was assumed, and where each figure comes from"
      @dc-unfold=${() => void import('../table-out/table-out.ts')}
    >
      <div class="groups">
        ${groups.map(
          ({ heading, rows }) => html`<section>
            <h3>${heading}</h3>
            <ul role="list">
              ${rows.map(assumptionRow)}
            </ul>
          </section>`,
        )}
      </div>
      <dc-table-out .table=${tableOf(groups)}></dc-table-out>
    </dc-folded-part>`;
  }
}

function tableOf(groups: readonly AssumptionGroup[]): PlotTable {
  return {
    caption: 'What was assumed',
    columns: ASSUMPTION_COLUMNS.map((name) => ({ name })),
    rows: assumptionRows(groups),
  };
}

function assumptionRow({ what, value, source, sureness }: Assumption): TemplateResult {
  const words = sureness === 'entered' ? 'entered for this shop' : sureness;
  const isUnsure = sureness === 'from memory, unverified';
  return html`<li>
    <span>${what}</span><span class="value">${value}</span>
    <span class="source"
      >${source}${source === '' ? '' : ' · '}<span class=${isUnsure ? 'unsure' : ''}>${words}</span></span
    >
  </li>`;
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-assumptions-panel': AssumptionsPanel;
  }
}
