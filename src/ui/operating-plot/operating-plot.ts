// The page's largest picture: what the collector gives, what the ducts ask, and the point where the
// two meet. Axes and collector are drawn anew only when they change; the rest moves with the gates.

import { html, LitElement, nothing, type PropertyValues, svg, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { guard } from 'lit/directives/guard.js';
import type { CollectorCurve } from '../../curve/collector-curve.ts';
import type { Knot } from '../../plot/bezier-path.ts';
import type { Box } from '../../plot/frame.ts';
import { type FlowPoint, type MovingPlot, movingPlot } from '../../plot/moving-plot.ts';
import type { LabelSpot } from '../../plot/place-label.ts';
import { type RuledPlot, ruledPlot } from '../../plot/ruled-plot.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { SizeController } from '../size-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { operatingPlotStyles } from './operating-plot.styles.ts';
import { plotAxes } from './plot-axes.ts';
import { textSize } from './text-size.ts';

/** A state already tried. */
export interface TriedPoint extends FlowPoint {
  /** What was open. */
  readonly name: string;
}

const FLOW_SIZE = 26;
const SUCTION_SIZE = 16;
const SMALL = 13;
const TRIED_SIZE = 12;
const LINE_GAP = 4;

/**
 * The operating-point plot.
 *
 * @element dc-operating-plot
 */
@customElement('dc-operating-plot')
export class OperatingPlot extends LitElement {
  static override styles = [baseStyles, operatingPlotStyles];

  /** The picture in a sentence, for those who don't see it. */
  @property() label = '';
  @property({ attribute: false }) units: UnitSystem = 'us';
  @property({ attribute: false }) curve: CollectorCurve | undefined;
  /** What the collector is called on its line. */
  @property() collector = 'collector';
  /** What the ducts ask, by rising flow. */
  @property({ attribute: false }) system: readonly Knot[] = [];
  @property({ attribute: false }) point: FlowPoint | undefined;
  /** Where the curves cross besides. */
  @property({ attribute: false }) others: readonly FlowPoint[] = [];
  @property({ attribute: false }) trail: readonly TriedPoint[] = [];
  /** What is written where the numbers would stand, if there is no point. */
  @property() instead = '';

  readonly #size = new SizeController(this);
  #ruled: RuledPlot | undefined;
  #ruledFor: readonly unknown[] = [];
  #lastSpot: LabelSpot | undefined;

  protected override willUpdate(_changed: PropertyValues): void {
    const { width, height } = this.#size;
    const wanted = [this.curve, this.units, width, height];
    if (wanted.every((value, i) => value === this.#ruledFor[i])) return;
    this.#ruledFor = wanted;
    this.#lastSpot = undefined;
    this.#ruled =
      this.curve && width >= 120 && height >= 120
        ? ruledPlot(this.curve, this.units, { width, height })
        : undefined;
  }

  protected override render(): TemplateResult {
    const ruled = this.#ruled;
    if (!ruled) return html`${nothing}`;
    const flow = this.point && formatQuantity('flow', this.units, this.point.flow);
    const suction = this.point && formatQuantity('pressure', this.units, this.point.suction);
    const flowSize = textSize(flow?.number ?? '', FLOW_SIZE);
    const unitSize = textSize(` ${flow?.unit ?? ''}`, SMALL);
    const suctionSize = textSize(suction?.number ?? '', SUCTION_SIZE);
    const suctionUnit = textSize(` ${suction?.unit ?? ''}`, SMALL);
    const moving = movingPlot(ruled, {
      system: this.system,
      point: this.point,
      others: this.others,
      trail: this.trail,
      labels: {
        point: {
          width: Math.max(flowSize.width + unitSize.width, suctionSize.width + suctionUnit.width),
          height: flowSize.height + suctionSize.height,
        },
        collector: textSize(this.collector, SMALL),
        system: textSize(SYSTEM_LABEL, SMALL),
        trail: this.trail.map((tried) => textSize(tried.name, TRIED_SIZE)),
      },
      lastSpot: this.#lastSpot,
    });
    this.#lastSpot = moving.labels.point?.spot;
    const { inner } = ruled.frame;
    return html`<svg class="plot" role="img" aria-label=${this.label}>
      <clipPath id="frame">
        <rect x=${inner.left} y=${inner.top} width=${inner.right - inner.left} height=${inner.bottom - inner.top} />
      </clipPath>
      ${guard([ruled], () => plotAxes(ruled))}
      <path class="system" clip-path="url(#frame)" d=${moving.system} />
      ${guard(
        [ruled],
        () => svg`${ruled.collector.unknown.map(
          (path) => svg`<path class="unknown" clip-path="url(#frame)" d=${path} />`,
        )}
        <path class="collector" d=${ruled.collector.known} />
        ${ruled.collector.points.map(({ x, y }) => svg`<circle class="entered" cx=${x} cy=${y} r="4" />`)}`,
      )}
      ${moving.trail.map(({ x, y }) => svg`<circle class="tried" cx=${x} cy=${y} r="3.5" />`)}
      ${moving.others.map(({ x, y }) => svg`<circle class="other" cx=${x} cy=${y} r="7" />`)}
      ${this.#lineLabels(moving)}
      ${
        moving.point
          ? svg`<circle class="point" cx=${moving.point.x} cy=${moving.point.y} r="8.5" />`
          : nothing
      }
      ${this.#numbers(ruled, moving, flow, suction)}
    </svg>`;
  }

  #lineLabels(moving: MovingPlot): TemplateResult[] {
    const { collector, system, trail } = moving.labels;
    return [
      line(collector, 'label-collector', this.collector),
      line(system, 'label-system', SYSTEM_LABEL),
      ...trail.map((box, i) => line(box, 'label-tried', this.trail[i]?.name ?? '')),
    ];
  }

  #numbers(
    ruled: RuledPlot,
    moving: MovingPlot,
    flow: { number: string; unit: string } | undefined,
    suction: { number: string; unit: string } | undefined,
  ): TemplateResult {
    const { inner } = ruled.frame;
    if (!flow || !suction) {
      const x = (inner.left + inner.right) / 2;
      const y = (inner.top + inner.bottom) / 2;
      return svg`<text class="instead" text-anchor="middle" x=${x} y=${y}>${this.instead}</text>` as TemplateResult;
    }
    const box = moving.labels.point?.box;
    const left = box?.left ?? inner.left + LINE_GAP;
    const top = box?.top ?? inner.bottom - 60;
    return svg`<text class="flow-number over-grid" x=${left} y=${top + FLOW_SIZE * 0.92}>${flow.number}<tspan class="point-unit"> ${flow.unit}</tspan></text>
      <text class="suction-number over-grid" x=${left} y=${top + FLOW_SIZE * 1.2 + SUCTION_SIZE * 0.92}>${suction.number}<tspan class="point-unit"> ${suction.unit}</tspan></text>` as TemplateResult;
  }
}

const SYSTEM_LABEL = 'ducts, as open now';

function line(box: Box | undefined, kind: string, text: string): TemplateResult {
  if (!box) return svg`` as TemplateResult;
  return svg`<text class="${kind} over-grid" x=${box.left} y=${(box.top + box.bottom) / 2} dominant-baseline="central">${text}</text>` as TemplateResult;
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-operating-plot': OperatingPlot;
  }
}
