// What the shop is bought and cut from, with what it costs as far as prices are typed, and the command
// that asks for the whole sheet to be printed.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement } from 'lit/decorators.js';
import type { PlotTable } from '../../plot/plot-table.ts';
import { setCurrency, setStockLength } from '../../shop/edits/edit-purchase.ts';
import {
  CUT_LIST_COLUMNS,
  CUT_PLAN_COLUMNS,
  cutListRows,
  cutPlanRows,
} from '../../state/cut-list/cut-list-table.ts';
import {
  type CutListView,
  cutListView,
  type StockChoice,
  USUAL_STOCK,
} from '../../state/cut-list/cut-list-view.ts';
import type { Session } from '../../state/session.ts';
import { sheetStates, stateTable } from '../../state/sheet-view.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import { SessionController } from '../session-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { panelFormStyles } from '../styles/panel-form.styles.ts';
import '../table-out/table-out.ts';
import { currencyChoices } from './currency-choices.ts';
import { cutListPanelStyles } from './cut-list-panel.styles.ts';
import { itemGroup } from './item-group.ts';
import { PrintEvent } from './print-event.ts';

const STATES_CAPTION = 'Every drop and saved set';
/** What the document allows of a length of stock [m]. */
const STOCK_LIMITS = { low: 0.3, high: 30 } as const;

/**
 * @element dc-cut-list-panel
 * @fires dc-print - the sheet is to be printed
 */
@customElement('dc-cut-list-panel')
export class CutListPanel extends LitElement {
  static override styles = [baseStyles, buttonStyles, panelFormStyles, cutListPanelStyles];

  readonly #session = new SessionController(
    this,
    (session) => ({
      session,
      units: session.units.value,
      list: cutListView(session.shop.value, session.units.value),
    }),
    'when seen',
  );

  protected override render(): TemplateResult {
    const view = this.#session.value;
    if (!view) return html`${nothing}`;
    const { session, units, list } = view;
    return html`<div class="group">
        <p class="about">
          The sheet has the drawing, the operating point, every drop and saved set, this cut list, what was
          assumed, and the cautions. It fits A4 and Letter.
        </p>
        <button
          type="button"
          class="print"
          @click=${() => this.dispatchEvent(new PrintEvent())}
        >
          <span>Print the sheet</span>
        </button>
        <p class="about">Every drop alone and every saved set, as a table:</p>
        <dc-table-out
          caption=${STATES_CAPTION}
          .table=${() => statesTable(session, units)}
        ></dc-table-out>
      </div>
      <div class="group">
        <h3>Bought in lengths of</h3>
        <div class="fields">
          ${list.stocks.map((stock) => stockField(session, stock, units))}
          <dc-choice-field
            label="Currency of the prices"
            .choices=${currencyChoices(list.currency)}
            .value=${list.currency ?? ''}
            @dc-choice=${({ value }: ChoiceEvent) => session.edit(setCurrency(value === '' ? undefined : value))}
          ></dc-choice-field>
        </div>
      </div>
      <div class="group">
        <h3>What to buy</h3>
        <p class="about">
          Prices may be left out. Saw cuts, hangers, clamps, screws, tape, hoods, the collector and what joins it
          to the main are not counted.
        </p>
        ${list.groups.map((group) => itemGroup(session, group))}
        ${total(list)}
        <dc-table-out .table=${tableOf(list)}></dc-table-out>
      </div>
      <div class="group">
        <h3>How to cut the pipe</h3>
        ${list.plans.map(plan)}
        <dc-table-out .table=${plansTable(list)}></dc-table-out>
      </div>`;
  }
}

function stockField(
  session: Session,
  { family, name, chosen }: StockChoice,
  units: UnitSystem,
): TemplateResult {
  const usual = formatQuantity('length', units, USUAL_STOCK[units]).text;
  return html`<dc-quantity-field
    optional
    .label=${name}
    quantity="length"
    .units=${units}
    .value=${chosen}
    .low=${STOCK_LIMITS.low}
    .high=${STOCK_LIMITS.high}
    .placeholder=${usual}
    .hint=${chosen === undefined ? `empty: ${usual}, the usual length` : ''}
    @dc-quantity=${({ value }: QuantityEvent) => session.edit(setStockLength(family, value))}
  ></dc-quantity-field>`;
}

function total({ total: sum, unpriced }: CutListView): TemplateResult {
  if (sum === undefined) return html`${nothing}`;
  const missing = unpriced === 1 ? '1 item has' : `${unpriced} items have`;
  const words = unpriced === 0 ? 'Total' : `Total so far; ${missing} no price yet`;
  return html`<p class="total"><span>${words}</span><span>${sum}</span></p>`;
}

function plan({ heading, rows }: CutListView['plans'][number]): TemplateResult {
  return html`<details>
    <summary>${heading}</summary>
    <ul class="plan" role="list">
      ${rows.map(
        ({ times, cuts, left }) => html`<li>
          <b>${times} ×</b> ${cuts.map(
            ({ length, section }, i) => html`${i === 0 ? '' : ' + '}<b>${length}</b> ${section}`,
          )}<span class="left">; left: ${left}</span>
        </li>`,
      )}
    </ul>
  </details>`;
}

function plansTable(list: CutListView): PlotTable {
  return {
    caption: 'How to cut the pipe',
    columns: CUT_PLAN_COLUMNS.map((name) => ({ name })),
    rows: cutPlanRows(list.plans),
  };
}

/** Every state is solved for it, so it is made only when it is wanted. */
function statesTable(session: Session, units: UnitSystem): PlotTable {
  const states = sheetStates(session.shop.peek(), units);
  return { caption: STATES_CAPTION, ...stateTable(states) };
}

function tableOf(list: CutListView) {
  return {
    caption: 'Cut list',
    columns: CUT_LIST_COLUMNS.map((name) => ({ name })),
    rows: cutListRows(list),
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-cut-list-panel': CutListPanel;
  }
}
