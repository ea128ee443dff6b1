// The trail of operating points as a table, folded: what was open, what it gave, whether it will do.

import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Tried } from '../../state/trail.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { figureTable } from '../plot-figure/figure-table.ts';
import { figureTableStyles } from '../plot-figure/figure-table.styles.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { ClearTrailEvent } from './clear-trail-event.ts';
import { triedRows } from './tried-rows.ts';

/**
 * @element dc-tried-table
 * @fires dc-clear-trail - the states are to be forgotten
 */
@customElement('dc-tried-table')
export class TriedTable extends LitElement {
  static override styles = [
    baseStyles,
    buttonStyles,
    figureTableStyles,
    css`
      :host {
        display: block;
        container-type: inline-size;
        min-inline-size: 0;
      }

      button {
        margin-inline-start: -6px;
      }

      @media print {
        button {
          display: none;
        }
      }
    `,
  ];

  /** The states tried, the latest last. */
  @property({ attribute: false }) trail: readonly Tried[] = [];
  @property({ attribute: false }) units: UnitSystem = 'us';

  @state() private isOpen = false;

  protected override render(): TemplateResult {
    return html`<details @toggle=${(event: Event) => this.#onToggle(event)}>
      <summary>Tried so far: ${this.trail.length}</summary>
      ${
        this.isOpen
          ? html`${figureTable(triedRows(this.trail, this.units))}
              <button type="button" @click=${() => this.dispatchEvent(new ClearTrailEvent())}>
                <span>Clear what was tried</span>
              </button>`
          : nothing
      }
    </details>`;
  }

  #onToggle(event: Event): void {
    this.isOpen = (event.currentTarget as HTMLDetailsElement).open;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-tried-table': TriedTable;
  }
}
