// The sheet's cut list: what to buy, and how the pipe is cut.

import { html, nothing, type TemplateResult } from 'lit';
import type { CutPlan } from '../../state/cut-list/cut-plan.ts';
import type { CutListView, ItemRow } from '../../state/cut-list/cut-list-view.ts';
import { keptTogether } from './sheet-group.ts';
import { unbroken } from '../unbroken.ts';

/**
 * Writes the cut list. Prices have columns of their own where there are any.
 *
 * @param view - the cut list
 * @returns two parts of the sheet
 */
export function sheetCuts(view: CutListView): TemplateResult {
  const { groups, plans, total, currency } = view;
  const hasPrices = total !== undefined;
  const money = currency === undefined ? nothing : html` <span class="unit">${currency}</span>`;
  return html`<section>
      <h2>Cut list</h2>
      <p class="about">
        Saw cuts, hangers, clamps, screws, tape, hoods, the collector and what joins it to the main are not
        counted.
      </p>
      <table class=${hasPrices ? 'cuts priced' : 'cuts'}>
        <colgroup>
          <col class="what" />
          <col />
          ${hasPrices ? html`<col class="price" /><col class="cost" />` : nothing}
        </colgroup>
        <thead>
          <tr>
            <th scope="col">What to buy</th>
            <th scope="col">How much</th>
            ${
              hasPrices
                ? html`<th scope="col" class="end">Price${money}</th>
                  <th scope="col" class="end">Cost${money}</th>`
                : nothing
            }
          </tr>
        </thead>
        ${groups.map(
          ({ heading, rows }) => html`<tbody class=${keptTogether(rows.length)}>
            <tr>
              <th class="set" scope="rowgroup" colspan=${hasPrices ? 4 : 2}>${heading}</th>
            </tr>
            ${rows.map((item) => itemRow(item, hasPrices))}
          </tbody>`,
        )}
        ${hasPrices ? totalRow(view) : nothing}
      </table>
    </section>
    <section>
      <h2>How to cut the pipe</h2>
      <table class="plans">
        <colgroup>
          <col class="times" />
          <col />
          <col class="left" />
        </colgroup>
        <thead>
          <tr>
            <th scope="col" class="end">Lengths</th>
            <th scope="col">Cut from each</th>
            <th scope="col" class="end">Left over</th>
          </tr>
        </thead>
        ${plans.map(planRows)}
      </table>
    </section>`;
}

function itemRow(item: ItemRow, hasPrices: boolean): TemplateResult {
  const { what, amount, per, priceText, cost } = item;
  return html`<tr>
    <th scope="row">${unbroken(what)}</th>
    <td>${unbroken(amount)}</td>
    ${
      hasPrices
        ? html`<td class="end">${priceText === '' ? '–' : html`${priceText} <span class="unit">${per}</span>`}</td>
          <td class="end">${cost === '' ? '–' : cost}</td>`
        : nothing
    }
  </tr>`;
}

function totalRow({ total, unpriced }: CutListView): TemplateResult {
  const missing = unpriced === 1 ? '1 item has' : `${unpriced} items have`;
  const words = unpriced === 0 ? 'Total' : `Total so far; ${missing} no price`;
  return html`<tbody>
    <tr class="total">
      <th scope="row" colspan="2">${words}</th>
      <td class="end" colspan="2">${unbroken(total ?? '')}</td>
    </tr>
  </tbody>`;
}

function planRows({ heading, rows }: CutPlan): TemplateResult {
  return html`<tbody class=${keptTogether(rows.length)}>
    <tr>
      <th class="set" scope="rowgroup" colspan="3">${unbroken(heading)}</th>
    </tr>
    ${rows.map(
      ({ times, cuts, left }) => html`<tr>
        <td class="end">${times}</td>
        <td>
          ${cuts.map(
            ({ length, section }, i) =>
              html`${i === 0 ? '' : ' + '}<b>${unbroken(length)}</b> ${section}`,
          )}
        </td>
        <td class="end">${unbroken(left)}</td>
      </tr>`,
    )}
  </tbody>`;
}
