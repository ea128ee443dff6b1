// A table of answers: each row may be taken over into the shop or kept beside it, and where it helps
// the rows can be sorted by the head of a column.

import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { Portions } from '../portions.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import '../table-out/table-out.ts';
import { unbroken } from '../unbroken.ts';
import { VERDICT_SHAPES } from '../verdict/verdict-shape.ts';
import { verdictShapeStyles } from '../verdict/verdict-shape.styles.ts';
import {
  type AnswerCell,
  type AnswerColumn,
  type AnswerRow,
  cellText,
  type FootRow,
  sortedRows,
  type SortOrder,
} from '../../state/decisions/answer-rows.ts';
import { answerTableStyles } from './answer-table.styles.ts';
import { plainTable } from './plain-table.ts';
import { TakeEvent } from './take-event.ts';

/** Rows that are drawn in a frame. */
const PORTION = 3;

/**
 * @element dc-answer-table
 * @fires dc-take - a row is to be taken over, or kept beside the shop
 */
@customElement('dc-answer-table')
export class AnswerTable extends LitElement {
  static override styles = [baseStyles, buttonStyles, verdictShapeStyles, answerTableStyles];

  /** What the table shows, in a few words. */
  @property() caption = '';
  @property({ attribute: false }) columns: readonly AnswerColumn[] = [];
  @property({ attribute: false }) rows: readonly AnswerRow[] = [];
  /** What stands below the rows. */
  @property({ attribute: false }) foot: readonly FootRow[] = [];
  @property({ type: Boolean }) sortable = false;

  @state() private order: SortOrder | undefined;

  readonly #portions = new Portions<TemplateResult>(this, PORTION);

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('rows') || changed.has('columns')) this.#portions.restart();
  }

  protected override render(): TemplateResult {
    const isTakeable = this.rows.some(({ take }) => take !== undefined);
    const drawn = this.#portions.fill(this.rows.length, (i) =>
      this.#row(this.rows[i]!, isTakeable),
    );
    const places = new Map(this.rows.map((row, i) => [row, i]));
    return html`<p class="caption" id="caption">${this.caption}</p>
      <div class="scroll" role="region" aria-labelledby="caption" tabindex="0">
      <table aria-labelledby="caption" aria-busy=${this.#portions.isWhole ? nothing : 'true'}>
        <thead>
          ${this.#groups(isTakeable)}
          <tr>
            ${this.columns.map((column, i) => this.#head(column, i))}
            ${isTakeable ? html`<td class="take"><span class="for-ears">take over</span></td>` : nothing}
          </tr>
        </thead>
        <tbody>
          ${repeat(
            sortedRows(this.rows, this.order).filter((row) => drawn[places.get(row)!]),
            ({ key }) => key,
            (row) => drawn[places.get(row)!],
          )}
        </tbody>
        ${this.foot.length === 0 ? nothing : html`<tfoot>${this.foot.map(footRow)}</tfoot>`}
      </table>
    </div>
      <dc-table-out caption=${this.caption} .table=${() => plainTable(this)}></dc-table-out>`;
  }

  /** A row above the heads where columns belong together. */
  #groups(isTakeable: boolean): TemplateResult {
    if (this.columns.every(({ group }) => group === undefined)) return html`${nothing}`;
    const groups: { name: string; span: number }[] = [];
    for (const { group = '' } of this.columns) {
      const last = groups.at(-1);
      if (last?.name === group) last.span += 1;
      else groups.push({ name: group, span: 1 });
    }
    return html`<tr class="groups">
      ${groups.map(({ name, span }) =>
        name === ''
          ? html`<td colspan=${span}></td>`
          : html`<th scope="colgroup" colspan=${span}>${name}</th>`,
      )}
      ${isTakeable ? html`<td class="take"></td>` : nothing}
    </tr>`;
  }

  #head({ name, unit }: AnswerColumn, column: number): TemplateResult {
    const kind = unit === undefined ? 'words' : 'number';
    const words = html`${unbroken(name)}${unit ? html` <span class="unit">${unit}</span>` : nothing}`;
    if (!this.sortable) return html`<th scope="col" class=${kind}>${words}</th>`;
    const isBy = this.order?.column === column;
    const arrow = this.order?.direction === 'descending' ? '↓' : '↑';
    return html`<th scope="col" class=${kind} aria-sort=${isBy ? this.order!.direction : nothing}>
      <button type="button" @click=${() => this.#sort(column)}>
        <span>${name}</span>${isBy ? html`<span class="arrow" aria-hidden="true">${arrow}</span>` : nothing}
        ${unit ? html`<small class="unit">${unit}</small>` : nothing}
      </button>
    </th>`;
  }

  #row({ key, cells, mark, take }: AnswerRow, isTakeable: boolean): TemplateResult {
    const kind = (i: number) => (this.columns[i]?.unit === undefined ? 'words' : 'number');
    const [name, ...rest] = cells;
    return html`<tr class=${mark === undefined ? '' : 'marked'}>
      <th scope="row"><div class="name">${content(name ?? '')}</div>${mark ? html`<span class="mark">${mark}</span>` : nothing}</th>
      ${rest.map((cell, i) => cellOf(cell, kind(i + 1)))}
      ${
        isTakeable
          ? html`<td class="take">
              ${
                take === undefined
                  ? nothing
                  : html`<div class="actions">
                      ${this.#action(key, 'make', 'Make it so', take)}
                      ${this.#action(key, 'keep', 'Keep beside', take)}
                    </div>`
              }
            </td>`
          : nothing
      }
    </tr>`;
  }

  #action(key: string, how: 'make' | 'keep', words: string, take: string): TemplateResult {
    return html`<button
      type="button"
      aria-label="${words}: ${take}"
      @click=${() => this.dispatchEvent(new TakeEvent(key, how))}
    >
      <span>${words}</span>
    </button>`;
  }

  #sort(column: number): void {
    const isAgain = this.order?.column === column && this.order.direction === 'ascending';
    this.order = { column, direction: isAgain ? 'descending' : 'ascending' };
  }
}

function footRow({ name, cells }: FootRow): TemplateResult {
  return html`<tr>
    <th scope="row"><div class="name">${name}</div></th>
    ${cells.map(({ text, span }) => html`<td colspan=${span}>${text}</td>`)}
  </tr>`;
}

/** Words are broken where they are long, but not narrower than they need be. */
function cellOf(cell: string | AnswerCell, kind: string): TemplateResult {
  return kind === 'words'
    ? html`<td class="words"><div>${content(cell)}</div></td>`
    : html`<td class="number">${content(cell)}</td>`;
}

function content(cell: string | AnswerCell): TemplateResult {
  const verdict = typeof cell === 'object' ? cell.verdict : undefined;
  if (verdict === undefined) return html`${cellText(cell)}`;
  return html`<svg class="verdict" width="16" height="16" viewBox="-8 -8 16 16" aria-hidden="true">
      ${VERDICT_SHAPES[verdict]}</svg
    >${cellText(cell)}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-answer-table': AnswerTable;
  }
}
