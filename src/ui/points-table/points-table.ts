// The points of a curve as a small table: add, change and remove; rows sort themselves by flow once
// the focus leaves them. What is wrong stands in its row.

import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { CurvePoint } from '../../curve/curve-data.ts';
import { pastedPoints } from '../../state/pasted-points.ts';
import { judgeRows, type PointRow, sortedRows } from '../../state/point-rows.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { fieldStyles } from '../styles/field.styles.ts';
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

  /** What the pressures are, as the heading of their column. */
  @property() pressure = 'Pressure';

  @state() private rows: readonly PointRow[] = [];

  #lastKey = 0;
  #sent: readonly CurvePoint[] | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('points') && this.hasUpdated) return;
    if (this.#sent !== undefined && isSame(this.#sent, this.points)) return;
    this.#sent = undefined;
    this.rows =
      this.points.length > 0
        ? this.points.map((point) => ({ key: ++this.#lastKey, ...point }))
        : Array.from({ length: ROWS_TO_START }, () => this.#emptyRow());
  }

  protected override render(): TemplateResult {
    const { problems, problem, halfFilled } = judgeRows(this.rows, this.units);
    const isUntouched = this.rows.every(({ flow, pressure }) => (flow ?? pressure) === undefined);
    return html`<table @paste=${(event: ClipboardEvent) => this.#onPaste(event)}>
        <caption>
          Points of the curve, in any order; two columns can be pasted
        </caption>
        <thead>
          <tr>
            <th scope="col">Flow</th>
            <th scope="col">${this.pressure}</th>
            <td></td>
          </tr>
        </thead>
        <tbody>
          ${repeat(
            this.rows,
            ({ key }) => key,
            (row, i) => this.#row(row, i, problems.get(row.key) ?? ''),
          )}
        </tbody>
      </table>
      ${problem === '' ? nothing : html`<p class=${isUntouched ? 'hint' : 'problem'} role="status">${problem}</p>`}
      ${halfFilled === 0 ? nothing : html`<p class="hint">${halfFilledWords(halfFilled)}</p>`}
      <button type="button" @click=${() => this.#add()}><span>Add a point</span></button>`;
  }

  #row({ key, flow, pressure }: PointRow, i: number, problem: string): TemplateResult {
    return html`<tr @focusout=${(event: FocusEvent) => this.#onLeave(event)}>
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
      <td>
        <button
          type="button"
          aria-label=${`Remove point ${i + 1}`}
          @click=${() => this.#change(this.rows.filter((row) => row.key !== key))}
        >
          <span>Remove</span>
        </button>
      </td>
    </tr>`;
  }

  /** Two columns pasted into a field are points: all at once, and one step to undo. */
  #onPaste(event: ClipboardEvent): void {
    const points = pastedPoints(event.clipboardData?.getData('text/plain') ?? '', this.units);
    if (points === undefined) return;
    event.preventDefault();
    const filled = this.rows.filter(({ flow, pressure }) => (flow ?? pressure) !== undefined);
    const added = points.map((point) => ({ key: ++this.#lastKey, ...point }));
    this.#change(sortedRows([...filled, ...added]));
  }

  #emptyRow(): PointRow {
    return { key: ++this.#lastKey, flow: undefined, pressure: undefined };
  }

  #set(event: QuantityEvent, key: number, what: 'flow' | 'pressure'): void {
    event.stopPropagation();
    const { value } = event;
    this.#change(this.rows.map((row) => (row.key === key ? { ...row, [what]: value } : row)));
  }

  #change(rows: readonly PointRow[]): void {
    this.rows = rows;
    const { points } = judgeRows(rows, this.units);
    if (points === undefined || isSame(points, this.#sent ?? this.points)) return;
    this.#sent = points;
    this.dispatchEvent(new PointsEvent(points));
  }

  async #add(): Promise<void> {
    this.rows = [...this.rows, this.#emptyRow()];
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

function halfFilledWords(count: number): string {
  return count === 1
    ? 'One row is half filled and is left out until it is whole.'
    : `${count} rows are half filled and are left out until they are whole.`;
}

function isSame(a: readonly CurvePoint[], b: readonly CurvePoint[]): boolean {
  return (
    a.length === b.length &&
    a.every(({ flow, pressure }, i) => flow === b[i]!.flow && pressure === b[i]!.pressure)
  );
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-points-table': PointsTable;
  }
}
