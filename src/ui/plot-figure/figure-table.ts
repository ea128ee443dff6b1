// A plot's figures as a table: units in the head, the first column names the rows. Under it are its
// ways out, as CSV and as text.

import { html, nothing, type TemplateResult } from 'lit';
import type { PlotTable, TableColumn } from '../../plot/plot-table.ts';

/**
 * Writes the table. It scrolls by itself where it is wider than the page.
 *
 * @param table - the figures
 * @returns the template; it needs the figure table's styles
 */
export function figureTable(table: PlotTable): TemplateResult {
  const { caption, columns, rows } = table;
  void import('../table-out/table-out.ts');
  const kind = ({ unit }: TableColumn | undefined = { name: '' }) =>
    unit === undefined ? 'words' : 'number';
  return html`<div class="scroll" role="region" aria-label="${caption}, as a table" tabindex="0">
    <table>
      <caption>
        ${caption}
      </caption>
      <thead>
        <tr>
          ${columns.map(
            (column) => html`<th scope="col" class=${kind(column)}>
              ${column.name}${column.unit === undefined ? nothing : html` <span class="unit">${column.unit}</span>`}
            </th>`,
          )}
        </tr>
      </thead>
      <tbody>
        ${rows.map(
          ([head, ...cells]) => html`<tr>
            <th scope="row" class=${kind(columns[0])}>${head}</th>
            ${cells.map((cell, i) => html`<td class=${kind(columns[i + 1])}>${cell}</td>`)}
          </tr>`,
        )}
      </tbody>
    </table>
  </div>
  <dc-table-out .table=${table}></dc-table-out>`;
}
