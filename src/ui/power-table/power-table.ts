// Shaft power against flow as a small table. Rows sort themselves; two with one flow wait until that is
// put right.

import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { PowerPoint } from '../../curve/curve-data.ts';
import { powerFigures } from '../../plot/power-figures.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { fieldStyles } from '../styles/field.styles.ts';
import '../table-out/table-out.ts';
import { PowerEvent } from './power-event.ts';

interface PowerRow {
  readonly key: number;
  readonly flow: number | undefined;
  readonly power: number | undefined;
}

/**
 * @element dc-power-table
 * @fires dc-power - other points of power hold now
 */
@customElement('dc-power-table')
export class PowerTable extends LitElement {
  static override styles = [
    baseStyles,
    buttonStyles,
    fieldStyles,
    css`
      :host {
        display: block;
        max-inline-size: 26rem;
        margin-block-start: 12px;
      }

      .row {
        display: grid;
        grid-template-columns: minmax(0, 1fr) minmax(0, 1fr) 44px;
        gap: 0 8px;
        margin-block-end: 2px;
      }

      .row button {
        padding: 0;
        font-size: 1.125rem;
      }

      .row button > span {
        border: 0;
      }

      .add {
        margin-inline-start: -6px;
      }
    `,
  ];

  @property({ attribute: false }) power: readonly PowerPoint[] = [];
  @property({ attribute: false }) units: UnitSystem = 'us';

  @state() private rows: readonly PowerRow[] = [];

  #lastKey = 0;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('power') || isSame(this.power, whole(this.rows))) return;
    this.rows = this.power.map((point) => ({ ...point, key: ++this.#lastKey }));
  }

  protected override render(): TemplateResult {
    const points = whole(this.rows);
    const double = points.find(({ flow }, i) => flow === points[i - 1]?.flow);
    const problem = double
      ? 'One flow stands there twice. Until that is put right the former points hold.'
      : points.length < 2
        ? 'Two points of power are needed at least.'
        : '';
    return html`<div role="group" aria-label="Points of power against flow">
        ${repeat(
          this.rows,
          ({ key }) => key,
          (row, i) => html`<div class="row">
            ${this.#field(row, i, 'flow', 0, 100)}${this.#field(row, i, 'power', 0, 1e6)}
            <button
              type="button"
              aria-label="Remove power point ${i + 1}"
              @click=${() => this.#take(this.rows.filter(({ key }) => key !== row.key))}
            >
              <span aria-hidden="true">×</span>
            </button>
          </div>`,
        )}
      </div>
      ${problem === '' ? nothing : html`<p class="problem" role="status">${problem}</p>`}
      <button class="add" type="button" @click=${() => this.#add()}><span>Add a point of power</span></button>
      ${points.length === 0 ? nothing : html`<dc-table-out .table=${powerFigures(points, this.units)}></dc-table-out>`}`;
  }

  #field(
    row: PowerRow,
    i: number,
    what: 'flow' | 'power',
    low: number,
    high: number,
  ): TemplateResult {
    return html`<dc-quantity-field
      bare
      optional
      label=${what === 'flow' ? `Flow of power point ${i + 1}` : `Power of point ${i + 1}`}
      .quantity=${what}
      .units=${this.units}
      .value=${row[what]}
      .low=${low}
      .high=${high}
      @dc-quantity=${(event: QuantityEvent) => {
        event.stopPropagation();
        this.#take(
          this.rows.map((each) => (each.key === row.key ? { ...each, [what]: event.value } : each)),
        );
      }}
    ></dc-quantity-field>`;
  }

  #add(): void {
    this.rows = [...this.rows, { key: ++this.#lastKey, flow: undefined, power: undefined }];
  }

  #take(rows: readonly PowerRow[]): void {
    this.rows = rows;
    const points = whole(rows);
    const isCurve =
      points.length > 1 && points.every(({ flow }, i) => flow !== points[i - 1]?.flow);
    if (isCurve && !isSame(points, this.power)) this.dispatchEvent(new PowerEvent(points));
  }
}

/** Rows with both figures, by rising flow. */
function whole(rows: readonly PowerRow[]): readonly PowerPoint[] {
  const points = rows.flatMap(({ flow, power }) =>
    flow === undefined || power === undefined ? [] : [{ flow, power }],
  );
  return points.toSorted((a, b) => a.flow - b.flow);
}

function isSame(a: readonly PowerPoint[], b: readonly PowerPoint[]): boolean {
  return (
    a.length === b.length &&
    a.every(({ flow, power }, i) => flow === b[i]!.flow && power === b[i]!.power)
  );
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-power-table': PowerTable;
  }
}
