// A collector's curve as it is entered: the plot in which its points can be moved, and a little after it
// the same points as a table and what they mean. (A little over 200 lines, half of them templates.)

import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { guard } from 'lit/directives/guard.js';
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
import { gapWords } from '../../state/collector/gap-words.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { CurveEditEvent } from '../curve-meaning/curve-edit-event.ts';
import '../curve-meaning/curve-meaning.ts';
import '../curve-plot/curve-plot.ts';
import '../curve-sources/curve-sources.ts';
import type { PointMoveEvent } from '../curve-plot/point-move-event.ts';
import '../plot-figure/plot-tools.ts';
import '../points-table/points-table.ts';
import type { PointsEvent } from '../points-table/points-event.ts';
import '../steady-box/steady-box.ts';
import { baseStyles } from '../styles/base.styles.ts';
import type { TestPointsEvent } from '../test-worksheet/test-points-event.ts';
import type { TestSheetEvent } from '../test-worksheet/test-sheet-event.ts';
import { rhythmOf, Turns } from '../turns.ts';
import { curveEditorStyles } from './curve-editor.styles.ts';
import { CurveEvent } from './curve-event.ts';
import { basisWords } from './curve-words.ts';

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
  /** Whether a point is on the move. */
  readonly moving: boolean;
}

/**
 * @element dc-curve-editor
 * @fires dc-curve - the curve is another now
 */
@customElement('dc-curve-editor')
export class CurveEditor extends LitElement {
  static override styles = [baseStyles, curveEditorStyles];

  @property({ attribute: false }) curve: Curve | undefined;

  @property({ attribute: false }) units: UnitSystem = 'us';

  /** What it comes to; undefined where there is no shop yet. */
  @property({ attribute: false }) effect: CurveEffect | undefined;

  /** The air that a test of one's own begins with. */
  @property({ attribute: false }) air: TestAir | undefined;

  /** What the plot draws, the very same while curve and effect are; undefined without two points. */
  #entered: EnteredCurve | undefined;
  /** What all but the plot shows: while a point is moved, figures and words come a little after it. */
  #told: CurveTold | undefined;
  /** Whether the next curve comes of a move in the plot. */
  #isMoving = false;
  readonly #turns = new Turns(rhythmOf(2), (isAtRest) => {
    this.#tell(!isAtRest);
    this.requestUpdate();
  });

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#turns.forget();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('curve') && !changed.has('effect')) return;
    const { curve, effect } = this;
    const isLine = curve !== undefined && usedPoints(curve).length > 1;
    this.#entered = isLine ? enteredCurve({ curve, effect }) : undefined;
    const moving = this.#isMoving;
    this.#isMoving = false;
    if (!moving || this.#turns.isTurn()) this.#tell(moving);
  }

  #tell(moving: boolean): void {
    this.#told = this.curve && { curve: this.curve, effect: this.effect, moving };
  }

  protected override render(): TemplateResult {
    const { curve, units, air } = this;
    const told = this.#told;
    if (!curve || !told) return html`${nothing}`;
    return html`${this.#plot(curve, told)}
      ${guard([told, units, air], () => this.#entries(told))}`;
  }

  #entries({ curve, moving }: CurveTold): TemplateResult {
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
              ?moving=${moving}
              @dc-points=${(event: PointsEvent) => this.#onPoints(event)}
            ></dc-points-table>
          </dc-steady-box>
        </div>
        <div>
          <dc-steady-box>
            <dc-curve-meaning
              .curve=${curve}
              .units=${units}
              @dc-curve-edit=${({ edit }: CurveEditEvent) => this.#onEdit(edit)}
            ></dc-curve-meaning>
          </dc-steady-box>
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

  #plot(curve: Curve, told: CurveTold): TemplateResult {
    if (!this.#entered) return html`${nothing}`;
    const { units } = this;
    return html`<div class="plot">
      <dc-curve-plot
        .curve=${this.#entered}
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

  /** Made on the curve as it is by now, which may be more than what was shown. */
  #onEdit(edit: (curve: Curve) => Curve): void {
    if (this.curve) this.dispatchEvent(new CurveEvent(edit(this.curve)));
  }

  #send(changes: Partial<Curve>, mergeKey?: string): void {
    if (this.curve) this.dispatchEvent(new CurveEvent({ ...this.curve, ...changes }, mergeKey));
  }
}

/** What the plot draws. */
function enteredCurve({ curve, effect }: Omit<CurveTold, 'moving'>): EnteredCurve {
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
