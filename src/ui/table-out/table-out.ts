// Two ways out for a table of figures: a file for a spreadsheet, or text to be pasted.

import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { PlotTable } from '../../plot/plot-table.ts';
import { csvText, plainText } from '../../plot/table-text.ts';
import { freshId } from '../../shop/edits/fresh-id.ts';
import { saveFile } from '../shop-desk/save-file.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';

/** A table, or what makes it when it is wanted. */
type TableSource = PlotTable | (() => PlotTable);

/** @element dc-table-out */
@customElement('dc-table-out')
export class TableOut extends LitElement {
  static override styles = [
    baseStyles,
    buttonStyles,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 0 16px;
        margin-inline-start: -6px;
        font-size: var(--dc-small);
      }

      p {
        margin: 0;
        color: var(--dc-ink-soft);
      }

      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) table: TableSource | undefined;
  /** What the table shows, where it is made only when it is wanted. */
  @property() caption = '';

  /** What became of copying. */
  @state() private said = '';

  protected override render(): TemplateResult {
    const { table } = this;
    const caption = typeof table === 'object' ? table.caption : this.caption;
    return html`<button type="button" aria-label="Save as CSV: ${caption}" @click=${() => this.#save()}>
        <span>Save as CSV</span>
      </button>
      <button type="button" aria-label="Copy as text: ${caption}" @click=${() => void this.#copy()}>
        <span>Copy as text</span>
      </button>
      <p role="status">${this.said}</p>`;
  }

  #made(): PlotTable | undefined {
    return typeof this.table === 'function' ? this.table() : this.table;
  }

  #save(): void {
    const table = this.#made();
    if (!table) return;
    saveFile({ name: `${freshId(table.caption, [])}.csv`, text: csvText(table) }, 'text/csv');
  }

  async #copy(): Promise<void> {
    const table = this.#made();
    if (!table) return;
    try {
      await navigator.clipboard.writeText(plainText(table));
      this.said = 'Copied.';
    } catch {
      this.said = 'The browser does not allow copying here; save the CSV instead.';
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-table-out': TableOut;
  }
}
