// The page's largest picture: what the collector gives, what the ducts ask, and the point where the
// two meet. Axes and collector are drawn anew only when they change; the rest moves with the gates.
// (A little over 200 lines: one picture, its parts drawn in one order.)

import { html, LitElement, nothing, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { guard } from 'lit/directives/guard.js';
import type { CollectorCurve } from '../../curve/collector-curve.ts';
import type { Knot } from '../../plot/bezier-path.ts';
import type { Box } from '../../plot/frame.ts';
import { type FlowPoint, type MovingPlot, movingPlot } from '../../plot/moving-plot.ts';
import type { LabelSizes } from '../../plot/moving-labels.ts';
import { DUCTS_LABEL } from '../../plot/operating-lines.ts';
import { operatingReading } from '../../plot/operating-reading.ts';
import type { Readable } from '../../plot/reading.ts';
import { type RuledPlot, ruledPlot } from '../../plot/ruled-plot.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import '../plot-figure/plot-reader.ts';
import { SizeController } from '../size-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { operatingPlotStyles } from './operating-plot.styles.ts';
import { movedTo } from './moved-to.ts';
import { plotAxes } from './plot-axes.ts';
import { plotCollector } from './plot-collector.ts';
import { type PointLabel, pointLabel, pointLabelAt } from './point-label.ts';
import { textSize } from './text-size.ts';

/** A state already tried. */
export interface TriedPoint extends FlowPoint {
  /** What was open. */
  readonly name: string;
}

const LINE_LABEL_SIZE = 13;
const TRIED_LABEL_SIZE = 12;
/** Without it there is no room for axes [px]. */
const LEAST_SIZE = 120;

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
  /** What the numbers at the point say; they may come a little after it while it moves. */
  @property({ attribute: false }) numbers: FlowPoint | undefined;
  /** Where the curves cross besides. */
  @property({ attribute: false }) others: readonly FlowPoint[] = [];
  @property({ attribute: false }) trail: readonly TriedPoint[] = [];
  /** What is written where the numbers would stand, if there is no point. */
  @property() instead = '';

  readonly #size = new SizeController(this);
  #ruled: RuledPlot | undefined;
  #ruledFor: readonly unknown[] = [];
  #pointLabel: PointLabel | undefined;
  #moving: MovingPlot | undefined;
  /** What the labels were placed for. */
  #placedFor: readonly unknown[] = [];

  /** The picture, to be saved. */
  get picture(): SVGSVGElement | null {
    return this.renderRoot.querySelector<SVGSVGElement>('svg.plot');
  }

  /** Draws by the size that it has now, without waiting for a frame. */
  drawAtOnce(): void {
    this.#size.measure();
    this.requestUpdate();
    this.performUpdate();
  }

  protected override willUpdate(): void {
    this.#rule();
    const ruled = this.#ruled;
    const carries = ruled !== undefined && this.#carries(ruled);
    if (!carries) this.#say(ruled);
    this.#moving =
      ruled &&
      movingPlot(ruled, {
        system: this.system,
        point: this.point,
        others: this.others,
        trail: this.trail,
        labels: () => this.#labelSizes(),
        last: this.#moving?.spots,
        carried: carries ? this.#moving : undefined,
      });
  }

  protected override render(): TemplateResult {
    const ruled = this.#ruled;
    const moving = this.#moving;
    if (!ruled || !moving) return html`${nothing}`;
    const { left, right, top, bottom } = ruled.frame.inner;
    const { width, height } = ruled.size;
    const { scale } = this.#size;
    return html`<svg
      class="plot"
      role="img"
      aria-label=${this.label}
      width=${scale * width}
      height=${scale * height}
      viewBox="0 0 ${width} ${height}"
    >
      <clipPath id="frame">
        <rect x=${left} y=${top} width=${right - left} height=${bottom - top} />
      </clipPath>
      ${guard([ruled], () => plotAxes(ruled))}
      <path class="system" clip-path="url(#frame)" d=${moving.system} />
      ${guard([ruled], () => plotCollector(ruled.collector))}
      ${moving.trail.map(({ x, y }) => svg`<circle class="tried" cx=${x} cy=${y} r="4" />`)}
      ${moving.others.map(({ x, y }) => svg`<circle class="other" cx=${x} cy=${y} r="7" />`)}
      ${this.#lineLabels(moving)}${this.#point(ruled, moving)}
    </svg>
      <dc-plot-reader
        label="operating plot"
        .scale=${scale}
        .readable=${() => this.#readable(ruled, moving)}
      ></dc-plot-reader>`;
  }

  #say(ruled: RuledPlot | undefined): void {
    const said = this.point && (this.numbers ?? this.point);
    this.#pointLabel = said && pointLabel(said, this.units, ruled?.compact ? 'compact' : 'usual');
  }

  #labelSizes(): LabelSizes {
    return {
      point: this.#pointLabel?.size ?? textSize('', LINE_LABEL_SIZE),
      collector: textSize(this.collector, LINE_LABEL_SIZE),
      system: textSize(DUCTS_LABEL, LINE_LABEL_SIZE),
      trail: this.trail.map(({ name }) => textSize(name, TRIED_LABEL_SIZE)),
    };
  }

  /**
   * While the numbers come after the point, labels go along with it. They are placed anew when another
   * number is written, or when there are other things to name.
   */
  #carries(ruled: RuledPlot): boolean {
    const { numbers, collector, trail, others, point, units } = this;
    const wanted = [ruled, numbers, collector, units, others.length, point !== undefined];
    wanted.push(...trail.map(({ name }) => name));
    const isSame =
      wanted.length === this.#placedFor.length &&
      wanted.every((value, i) => value === this.#placedFor[i]);
    this.#placedFor = wanted;
    return isSame && numbers !== undefined && this.#moving !== undefined;
  }

  #readable(ruled: RuledPlot, moving: MovingPlot): Readable {
    const { curve, collector, system, point } = this;
    if (!curve) throw new RangeError('there is nothing to read without a curve');
    return operatingReading(ruled, moving, { curve, collector, system, point }, this.units);
  }

  /** Axes and collector are computed anew only for another collector, size or unit. */
  #rule(): void {
    const { width, height } = this.#size;
    const wanted = [this.curve, this.units, width, height];
    if (wanted.every((value, i) => value === this.#ruledFor[i])) return;
    this.#ruledFor = wanted;
    this.#moving = undefined;
    const hasRoom = width >= LEAST_SIZE && height >= LEAST_SIZE;
    this.#ruled =
      this.curve && hasRoom ? ruledPlot(this.curve, this.units, { width, height }) : undefined;
  }

  #lineLabels(moving: MovingPlot): SVGTemplateResult[] {
    const { collector, system, trail } = moving.labels;
    return [
      lineLabel(collector, 'label-collector', this.collector),
      lineLabel(system, 'label-system', DUCTS_LABEL),
      ...trail.map((box, i) => lineLabel(box, 'label-tried', this.trail[i]?.name ?? '')),
    ];
  }

  #point({ frame }: RuledPlot, { point, labels }: MovingPlot): SVGTemplateResult {
    if (!point || !this.#pointLabel) {
      const x = (frame.inner.left + frame.inner.right) / 2;
      const y = (frame.inner.top + frame.inner.bottom) / 2;
      return svg`<text class="instead" text-anchor="middle" x=${x} y=${y}>${this.instead}</text>`;
    }
    const numbers = labels.point;
    return svg`<g transform=${movedTo(point.x, point.y)}><circle class="point" r="8.5" />${
      numbers
        ? pointLabelAt(this.#pointLabel, numbers.left - point.x, numbers.top - point.y)
        : nothing
    }</g>`;
  }
}

function lineLabel(box: Box | undefined, kind: string, text: string): SVGTemplateResult {
  if (!box) return svg``;
  const middle = (box.top + box.bottom) / 2;
  // A group that moves spares its text a new layout, which a text that moves does not.
  return svg`<g transform=${movedTo(box.left, middle)}><text class="${kind} over-grid">${text}</text></g>`;
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-operating-plot': OperatingPlot;
  }
}
