// The sheet's tables of states: each drop alone, and each saved set.

import { html, nothing, type TemplateResult } from 'lit';
import type { SheetColumn, SheetStates } from '../../state/sheet-view.ts';
import { keptTogether } from './sheet-group.ts';
import { unbroken } from '../unbroken.ts';

/**
 * Writes the tables.
 *
 * @param states - their cells
 * @param range - the carrying range in words
 * @returns one or two parts of the sheet
 */
export function sheetStates({ columns, alone, sets }: SheetStates, range: string): TemplateResult {
  return html`<section>
      <h2>Each drop alone</h2>
      <p class="about">Only this gate is open. Chips keep moving from ${unbroken(range)}.</p>
      <table class="states">
        ${head(columns)}
        <tbody>
          ${alone.map((cells) => row(columns, cells))}
        </tbody>
      </table>
    </section>
    ${
      sets.length === 0
        ? nothing
        : html`<section>
      <h2>Saved sets</h2>
      <p class="about">All gates of a set are open together, all others are shut.</p>
      <table class="states">
        ${head(columns)}
        ${sets.map(
          ({ name, rows, sentence }) => html`<tbody class=${keptTogether(rows.length)}>
            <tr>
              <th class="set" scope="rowgroup" colspan=${columns.length}>${name}</th>
            </tr>
            ${rows.map((cells) => row(columns, cells))}
            <tr>
              <td class="said" colspan=${columns.length}>${unbroken(sentence)}</td>
            </tr>
          </tbody>`,
        )}
      </table>
    </section>`
    }`;
}

function head(columns: readonly SheetColumn[]): TemplateResult {
  return html`<colgroup>${columns.map(() => html`<col />`)}</colgroup><thead>
    <tr>
      ${columns.map(
        ({ name, unit, side }) => html`<th scope="col" class=${side}>
          ${name}${unit === '' ? nothing : html` <span class="unit">${unit}</span>`}
        </th>`,
      )}
    </tr>
  </thead>`;
}

function row(
  columns: readonly SheetColumn[],
  [first, ...cells]: readonly string[],
): TemplateResult {
  return html`<tr>
    <th scope="row">${first}</th>
    ${cells.map((cell, i) => html`<td class=${columns[i + 1]?.side ?? 'start'}>${unbroken(cell)}</td>`)}
  </tr>`;
}
