// A collector's curve as it is entered: the plot in which its points can be moved, the same points as a
// table, its name, and what the pressures mean.
// (Over 200 lines: each part of the curve stands with the edit that it makes.)

import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { guard } from 'lit/directives/guard.js';
import { live } from 'lit/directives/live.js';
import type { CollectorCurve } from '../../curve/collector-curve.ts';
import { enteredSpline } from '../../curve/entered-spline.ts';
import type { PressureTerms } from '../../curve/pressure-terms.ts';
import type { TestAir } from '../../curve/throttle-test/throttle-test.ts';
import { usedPoints } from '../../curve/used-points.ts';
import { curveTable } from '../../plot/curve-reading.ts';
import type { EnteredCurve } from '../../plot/curve-plot.ts';
import type { FlowPoint } from '../../plot/moving-plot.ts';
import { curveFromTest } from '../../shop/edits/curve-from-test.ts';
import type { Curve } from '../../shop/schema/curve-schema.ts';
import { fitWords } from '../../state/collector/fit-words.ts';
import { gapWords } from '../../state/collector/gap-words.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import '../basis-choice/basis-choice.ts';
import type { ChoiceEvent } from '../choice-field/choice-event.ts';
import '../choice-field/choice-field.ts';
import '../curve-plot/curve-plot.ts';
import '../curve-sources/curve-sources.ts';
import type { PointMoveEvent } from '../curve-plot/point-move-event.ts';
import '../plot-figure/plot-tools.ts';
import '../points-table/points-table.ts';
import type { PointsEvent } from '../points-table/points-event.ts';
import type { QuantityEvent } from '../quantity-field/quantity-event.ts';
import '../quantity-field/quantity-field.ts';
import '../steady-box/steady-box.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { fieldStyles } from '../styles/field.styles.ts';
import type { TestPointsEvent } from '../test-worksheet/test-points-event.ts';
import type { TestSheetEvent } from '../test-worksheet/test-sheet-event.ts';
import type { TextEvent } from '../text-field/text-event.ts';
import '../text-field/text-field.ts';
import { ROUND, Turns } from '../turns.ts';
import { curveEditorStyles } from './curve-editor.styles.ts';
import { CurveEvent } from './curve-event.ts';
import { basisWords } from './curve-words.ts';

/** Inside diameter of the pipe with the tap, until it is said: 6 in. [m]. */
const USUAL_TAP = 0.1524;

const FITS = [
  { value: 'through', words: 'exactly through the points' },
  { value: 'smooth', words: 'smoothed between scattered readings' },
];

/** What the curve comes to in the shop. */
export interface CurveEffect {
  readonly available: CollectorCurve;
  readonly point: FlowPoint | undefined;
  /** From the entered pressure at that point to what the ducts get. */
  readonly terms: PressureTerms | undefined;
}

/** A curve, and what it comes to. */
interface CurveTold {
  readonly curve: Curve;
  readonly effect: CurveEffect | undefined;
}

/**
 * @element dc-curve-editor
 * @fires dc-curve - the curve is another now
 */
@customElement('dc-curve-editor')
export class CurveEditor extends LitElement {
  static override styles = [baseStyles, fieldStyles, curveEditorStyles];

  @property({ attribute: false }) curve: Curve | undefined;

  @property({ attribute: false }) units: UnitSystem = 'us';

  /** What it comes to; undefined where there is no shop yet. */
  @property({ attribute: false }) effect: CurveEffect | undefined;

  /** The air that a test of one's own begins with. */
  @property({ attribute: false }) air: TestAir | undefined;

  /** What all but the plot shows: while a point is moved, figures and words come a little after it. */
  #told: CurveTold | undefined;
  /** Whether the next curve comes of a move in the plot. */
  #isMoving = false;
  readonly #turns = new Turns(ROUND, 2, () => {
    this.#told = this.curve && { curve: this.curve, effect: this.effect };
    this.requestUpdate();
  });

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#turns.forget();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('curve') && !changed.has('effect')) return;
    const isTold = !this.#isMoving || this.#turns.isTurn();
    this.#isMoving = false;
    if (isTold) this.#told = this.curve && { curve: this.curve, effect: this.effect };
  }

  protected override render(): TemplateResult {
    const { curve, units, air } = this;
    const told = this.#told;
    if (!curve || !told) return html`${nothing}`;
    return html`${this.#plot(curve, told)}
      ${guard([told, units, air], () => this.#entries(told.curve))}`;
  }

  #entries(curve: Curve): TemplateResult {
    const { units, air } = this;
    const words = basisWords(curve.basis.kind);
    return html`<div class="entries">
        <div>
          <dc-steady-box>
            <dc-points-table
              .points=${curve.points}
              .units=${units}
              .pressure=${words.column}
              .fit=${curve.fit?.kind ?? 'through'}
              @dc-points=${(event: PointsEvent) => this.#onPoints(event)}
            ></dc-points-table>
          </dc-steady-box>
        </div>
        <div>
          <dc-steady-box>${this.#meaning(curve, units)}</dc-steady-box>
        </div>
      </div>
      <dc-curve-sources
        .points=${curve.points}
        .units=${units}
        .test=${curve.test}
        .air=${air}
        @dc-points=${(event: PointsEvent) => this.#onSource(event)}
        @dc-test-sheet=${(event: TestSheetEvent) => this.#onTestSheet(event)}
        @dc-test-points=${(event: TestPointsEvent) => this.#onTestPoints(event)}
      ></dc-curve-sources>`;
  }

  #meaning(curve: Curve, units: UnitSystem): TemplateResult {
    return html`<div class="meaning">
      <dc-text-field
        label="Name of the collector"
        .value=${curve.name}
        @dc-text=${(event: TextEvent) => this.#onName(event)}
      ></dc-text-field>
      ${this.#fit(curve)}
      <dc-basis-choice
        .value=${curve.basis.kind}
        @dc-choice=${(event: ChoiceEvent) => this.#onBasis(event)}
      ></dc-basis-choice>
      ${curve.basis.kind === 'tap' ? this.#tap(curve.basis.diameter) : nothing}
      <fieldset>
        <legend>Taken with, so that it is not taken off again</legend>
        ${this.#part('filter', 'its clean filter')}${this.#part('separator', 'its separator')}
      </fieldset>
      <dc-quantity-field
        label="The points hold in air of"
        quantity="density"
        .units=${units}
        .value=${curve.density}
        .low=${0.01}
        .high=${2000}
        hint="Charts are mostly for 1.2 kg/m³, 0.075 lb/ft³."
        @dc-quantity=${(event: QuantityEvent) => this.#onAmount(event, (density) => ({ density }))}
      ></dc-quantity-field>
    </div>`;
  }

  #plot(curve: Curve, told: CurveTold): TemplateResult {
    if (usedPoints(curve).length < 2) return html`${nothing}`;
    const { units, effect } = this;
    return html`<div class="plot">
      <dc-curve-plot
        .curve=${enteredCurve({ curve, effect })}
        .units=${units}
        .pressure=${basisWords(curve.basis.kind).column}
        @dc-point-move=${(event: PointMoveEvent) => this.#onMove(event)}
      ></dc-curve-plot>
      ${guard([told, units], () => this.#foot(told))}
    </div>`;
  }

  #foot({ curve, effect }: CurveTold): TemplateResult {
    const { units } = this;
    const point = effect?.point;
    const entered = enteredCurve({ curve, effect });
    const end = 1.1 * Math.max(...curve.points.map(({ flow }) => flow), point?.flow ?? 0);
    return html`${
      effect?.terms && point
        ? html`<dc-steady-box
              ><p class="gap">${gapWords(point.flow, effect.terms, curve.basis, units)}</p></dc-steady-box
            >`
        : nothing
    }
      <dc-plot-tools
        label="collector’s curve"
        file="collector-curve"
        .table=${() => curveTable(entered, end, units)}
        .picture=${() => this.renderRoot.querySelector('dc-curve-plot')?.picture}
      ></dc-plot-tools>`;
  }

  #fit(curve: Curve): TemplateResult {
    const hint = usedPoints(curve).length < 2 ? '' : fitWords(curve, this.units);
    return html`<dc-choice-field
      label="The line goes"
      .choices=${FITS}
      .value=${curve.fit?.kind ?? 'through'}
      .hint=${hint}
      @dc-choice=${(event: ChoiceEvent) => this.#onFit(event)}
    ></dc-choice-field>`;
  }

  #tap(diameter: number): TemplateResult {
    return html`<dc-quantity-field
      label="Inside diameter of the pipe with the tap"
      quantity="diameter"
      .units=${this.units}
      .value=${diameter}
      .low=${0.01}
      .high=${2}
      @dc-quantity=${(event: QuantityEvent) =>
        this.#onAmount(event, (value) => ({ basis: { kind: 'tap', diameter: value } }))}
    ></dc-quantity-field>`;
  }

  #part(part: 'filter' | 'separator', words: string): TemplateResult {
    return html`<label
      ><input
        type="checkbox"
        .checked=${live(this.curve?.includes[part] ?? false)}
        @change=${(event: Event) => this.#onPart(event, part)}
      />${words}</label
    >`;
  }

  #onPoints(event: PointsEvent): void {
    event.stopPropagation();
    this.#send({ points: event.points });
  }

  /** By way of the table, which shows what is doubtful with them. */
  #onSource(event: PointsEvent): void {
    event.stopPropagation();
    this.renderRoot.querySelector('dc-points-table')?.take(event.points);
  }

  #onTestSheet(event: TestSheetEvent): void {
    event.stopPropagation();
    this.#send({ test: event.test });
  }

  #onTestPoints(event: TestPointsEvent): void {
    event.stopPropagation();
    const curve = this.curve && curveFromTest(this.curve, event.test);
    if (curve) this.dispatchEvent(new CurveEvent(curve));
  }

  #onMove({ index, point, run }: PointMoveEvent): void {
    const { curve } = this;
    if (!curve) return;
    this.#isMoving = true;
    this.#send({ points: curve.points.with(index, point) }, `point ${index} ${run}`);
  }

  #onName(event: TextEvent): void {
    event.stopPropagation();
    if (event.value !== undefined) this.#send({ name: event.value });
  }

  #onBasis(event: ChoiceEvent): void {
    event.stopPropagation();
    const { value } = event;
    const basis =
      value === 'tap'
        ? ({ kind: 'tap', diameter: USUAL_TAP } as const)
        : ({ kind: value === 'total' ? 'total' : 'fan-static' } as const);
    this.#send({ basis });
  }

  #onFit(event: ChoiceEvent): void {
    event.stopPropagation();
    if (!this.curve) return;
    const { fit: _, ...through } = this.curve;
    const curve: Curve =
      event.value === 'smooth' ? { ...through, fit: { kind: 'smooth' } } : through;
    this.dispatchEvent(new CurveEvent(curve));
  }

  #onAmount(event: QuantityEvent, changes: (value: number) => Partial<Curve>): void {
    event.stopPropagation();
    if (event.value !== undefined) this.#send(changes(event.value));
  }

  #onPart(event: Event, part: 'filter' | 'separator'): void {
    const { checked } = event.currentTarget as HTMLInputElement;
    if (this.curve) this.#send({ includes: { ...this.curve.includes, [part]: checked } });
  }

  #send(changes: Partial<Curve>, mergeKey?: string): void {
    if (this.curve) this.dispatchEvent(new CurveEvent({ ...this.curve, ...changes }, mergeKey));
  }
}

/** What the plot draws. */
function enteredCurve({ curve, effect }: CurveTold): EnteredCurve {
  return {
    points: curve.points,
    entered: enteredSpline(curve),
    available: effect?.available,
    point: effect?.point,
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-curve-editor': CurveEditor;
  }
}
