// The points of a curve as a small table: add, change, set aside and remove; rows sort themselves by
// flow once the focus leaves them. What is wrong or doubtful stands in its row, with what may be done.
// (Over 200 lines: rows, their order and the focus in them change together.)

import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { repeat } from 'lit/directives/repeat.js';
import type { CurvePoint } from '../../curve/curve-data.ts';
import { pointsFigures } from '../../plot/points-figures.ts';
import type { Remedy, RowDoubt } from '../../state/collector/row-doubt.ts';
import {
  type FitKind,
  type JudgedRows,
  judgeRows,
  type PointRow,
  sortedRows,
} from '../../state/point-rows.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import '../points-paste/points-paste.ts';
import type { PointsPaste } from '../points-paste/points-paste.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { fieldStyles } from '../styles/field.styles.ts';
import '../table-out/table-out.ts';
import { PointsEvent } from './points-event.ts';
import { pointsTableStyles } from './points-table.styles.ts';

/** What the document allows of a flow [m³/s] and a pressure [Pa]. */
const FLOW_LIMITS = { low: 0, high: 100 } as const;
const PRESSURE_LIMITS = { low: -100_000, high: 100_000 } as const;
/** Empty rows that a curve without points begins with. */
const ROWS_TO_START = 5;

/**
 * @element dc-points-table
 * @fires dc-points - other points make the curve now
 */
@customElement('dc-points-table')
export class PointsTable extends LitElement {
  static override styles = [baseStyles, buttonStyles, fieldStyles, pointsTableStyles];

  @property({ attribute: false }) points: readonly CurvePoint[] = [];

  @property({ attribute: false }) units: UnitSystem = 'us';

  /** How the line follows the points. */
  @property({ attribute: false }) fit: FitKind = 'through';

  /** What the pressures are, as the heading of their column. */
  @property() pressure = 'Pressure';

  /** Whether a point is on the move: what is doubtful is said when it rests, and no row comes or goes. */
  @property({ type: Boolean }) moving = false;

  @state() private rows: readonly PointRow[] = [];

  #judged: JudgedRows | undefined;
  #lastKey = 0;
  #sent: readonly CurvePoint[] | undefined;

  /** Puts points in the place of those that are there; undo brings these back. */
  take(points: readonly CurvePoint[]): void {
    this.#change(sortedRows(points.map((point) => ({ key: ++this.#lastKey, ...point }))));
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('points') || !this.hasUpdated) this.#takeOver();
    if (!this.moving || !this.#judged) this.#judged = judgeRows(this.rows, this.units, this.fit);
  }

  #takeOver(): void {
    if (this.#sent !== undefined && isSame(this.#sent, this.points)) return;
    this.#sent = undefined;
    const { length } = this.points;
    if (length === 0) {
      this.rows = Array.from({ length: ROWS_TO_START }, () => this.#emptyRow());
      return;
    }
    // Rows keep their keys while as many points as before come from elsewhere, as from a drag.
    const keys = this.rows.length === length ? this.rows.map(({ key }) => key) : [];
    this.rows = this.points.map((point, i) => ({ ...point, key: keys[i] ?? ++this.#lastKey }));
  }

  protected override render(): TemplateResult {
    if (!this.#judged) return html`${nothing}`;
    const { problems, doubts, problem, halfFilled } = this.#judged;
    const isUntouched = this.rows.every(({ flow, pressure }) => (flow ?? pressure) === undefined);
    return html`<table @paste=${(event: ClipboardEvent) => this.#onPaste(event)}>
        <caption>
          Points of the curve, in any order; two columns can be pasted
        </caption>
        <thead>
          <tr>
            <th scope="col">Flow</th>
            <th scope="col">${this.pressure}</th>
            <th scope="col" class="narrow">Use</th>
            <td class="narrow"></td>
          </tr>
        </thead>
        <tbody>
          ${repeat(
            this.rows,
            ({ key }) => key,
            (row, i) => this.#row(row, i, problems.get(row.key) ?? '', doubts.get(row.key)),
          )}
        </tbody>
      </table>
      ${problem === '' ? nothing : html`<p class=${isUntouched ? 'hint' : 'problem'} role="status">${problem}</p>`}
      ${halfFilled === 0 ? nothing : html`<p class="hint">${halfFilledWords(halfFilled)}</p>`}
      <button class="add" type="button" @click=${() => this.#add()}><span>Add a point</span></button>
      ${
        this.points.length === 0
          ? nothing
          : html`<dc-table-out
              .table=${pointsFigures(this.points, this.pressure, this.units)}
            ></dc-table-out>`
      }
      <dc-points-paste
        .units=${this.units}
        @dc-points=${(event: PointsEvent) => this.#onPasted(event)}
      ></dc-points-paste>`;
  }

  #row(row: PointRow, i: number, problem: string, doubt: RowDoubt | undefined): TemplateResult {
    const { key, flow, pressure, aside } = row;
    return html`<tr
        class=${aside ? 'aside' : ''}
        @focusout=${(event: FocusEvent) => this.#onLeave(event)}
      >
        <td>
          <dc-quantity-field
            bare
            optional
            label=${`Flow of point ${i + 1}`}
            quantity="flow"
            .units=${this.units}
            .value=${flow}
            .low=${FLOW_LIMITS.low}
            .high=${FLOW_LIMITS.high}
            .problem=${problem}
            @dc-quantity=${(event: QuantityEvent) => this.#set(event, key, 'flow')}
          ></dc-quantity-field>
        </td>
        <td>
          <dc-quantity-field
            bare
            optional
            label=${`${this.pressure} of point ${i + 1}`}
            quantity="pressure"
            .units=${this.units}
            .value=${pressure}
            .low=${PRESSURE_LIMITS.low}
            .high=${PRESSURE_LIMITS.high}
            @dc-quantity=${(event: QuantityEvent) => this.#set(event, key, 'pressure')}
          ></dc-quantity-field>
        </td>
        <td class="narrow">
          <label
            ><input
              type="checkbox"
              aria-label=${`Use point ${i + 1}`}
              .checked=${live(!aside)}
              @change=${() => this.#replace(key, withAside(row, !aside))}
          /></label>
        </td>
        <td class="narrow">
          <button
            type="button"
            aria-label=${`Remove point ${i + 1}`}
            @click=${() => this.#change(this.rows.filter((each) => each.key !== key))}
          >
            <span aria-hidden="true">×</span>
          </button>
        </td>
      </tr>
      ${doubt ? this.#note(row, i, doubt) : nothing}`;
  }

  #note(row: PointRow, i: number, { words, remedies }: RowDoubt): TemplateResult {
    return html`<tr>
      <td class="note" colspan="4">
        <p class="remark">Point ${i + 1}: ${words}</p>
        ${remedies.map(
          (remedy) => html`<button type="button" @click=${() => this.#remedy(row, remedy)}>
            <span>${remedy.words}</span>
          </button>`,
        )}
      </td>
    </tr>`;
  }

  /** Points pasted into a field are taken all at once; anything else is the field's own. */
  #onPaste(event: ClipboardEvent): void {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    const paste = this.renderRoot.querySelector<PointsPaste>('dc-points-paste');
    if (paste?.take(text)) event.preventDefault();
  }

  #onPasted(event: PointsEvent): void {
    event.stopPropagation();
    this.take(event.points);
  }

  #emptyRow(): PointRow {
    return { key: ++this.#lastKey, flow: undefined, pressure: undefined };
  }

  #set(event: QuantityEvent, key: number, what: 'flow' | 'pressure'): void {
    event.stopPropagation();
    const row = this.rows.find((each) => each.key === key);
    if (row) this.#replace(key, { ...row, [what]: event.value });
  }

  #remedy(row: PointRow, remedy: Remedy): void {
    switch (remedy.kind) {
      case 'aside':
        this.#replace(row.key, withAside(row, true));
        return;
      case 'replace':
        this.#change(sortedRows(this.#with(row.key, { ...row, ...remedy.point })));
        return;
      default:
        remedy satisfies never;
    }
  }

  #replace(key: number, row: PointRow): void {
    this.#change(this.#with(key, row));
  }

  #with(key: number, row: PointRow): readonly PointRow[] {
    return this.rows.map((each) => (each.key === key ? row : each));
  }

  #change(rows: readonly PointRow[]): void {
    this.rows = rows;
    const { points } = judgeRows(rows, this.units, this.fit);
    if (points === undefined || isSame(points, this.#sent ?? this.points)) return;
    this.#sent = points;
    this.dispatchEvent(new PointsEvent(points));
  }

  async #add(): Promise<void> {
    const row = this.#emptyRow();
    this.rows = [...this.rows, row];
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('tbody tr:last-child dc-quantity-field')?.focus();
  }

  /** Sorts once the row is left, and keeps the focus where it went though rows move under it. */
  async #onLeave({ currentTarget, relatedTarget }: FocusEvent): Promise<void> {
    const row = currentTarget as HTMLElement;
    if (relatedTarget instanceof Node && row.contains(relatedTarget)) return;
    const sorted = sortedRows(this.rows);
    if (sorted.every((each, i) => each === this.rows[i])) return;
    this.rows = sorted;
    await this.updateComplete;
    if (relatedTarget instanceof HTMLElement && this.renderRoot.contains(relatedTarget)) {
      relatedTarget.focus();
    }
  }
}

function withAside(row: PointRow, isAside: boolean): PointRow {
  const { aside: _, ...used } = row;
  return isAside ? { ...used, aside: true } : used;
}

function halfFilledWords(count: number): string {
  return count === 1
    ? 'One row is half filled and is left out until it is whole.'
    : `${count} rows are half filled and are left out until they are whole.`;
}

function isSame(a: readonly CurvePoint[], b: readonly CurvePoint[]): boolean {
  return (
    a.length === b.length &&
    a.every(
      ({ flow, pressure, aside }, i) =>
        flow === b[i]!.flow && pressure === b[i]!.pressure && aside === b[i]!.aside,
    )
  );
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-points-table': PointsTable;
  }
}
