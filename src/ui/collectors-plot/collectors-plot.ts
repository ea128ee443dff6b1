// Collectors' curves over the one curve of the ducts, and where each meets it.

import { html, LitElement, nothing, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import {
  type CollectorsLines,
  type CollectorsPlot as Drawn,
  collectorsPlot,
  type DrawnCollector,
} from '../../plot/collectors-plot.ts';
import type { Readable } from '../../plot/reading.ts';
import type { CurveOrigin } from '../../state/decisions/candidates.ts';
import { pointDoubtWords } from '../../state/decisions/collector-doubt-words.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { textSize } from '../operating-plot/text-size.ts';
import '../plot-figure/plot-reader.ts';
import { SizeController } from '../size-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { linePanelStyles } from '../styles/line-panel.styles.ts';
import { collectorsPlotStyles } from './collectors-plot.styles.ts';

const NAME_SIZE = 13;
/** Without it there is no room for axes [px]. */
const LEAST_WIDTH = 220;

/** @element dc-collectors-plot */
@customElement('dc-collectors-plot')
export class CollectorsPlot extends LitElement {
  static override styles = [baseStyles, linePanelStyles, collectorsPlotStyles];

  /** The picture in a sentence, for those who don't see it. */
  @property() label = '';
  @property({ attribute: false }) units: UnitSystem = 'us';
  @property({ attribute: false }) lines: CollectorsLines | undefined;

  readonly #size = new SizeController(this);

  /** The plot as one picture, to be saved. */
  get picture(): SVGSVGElement | null {
    return this.renderRoot.querySelector('svg.plot');
  }

  protected override render(): TemplateResult {
    const { lines, units } = this;
    const width = Math.min(this.#size.width, 900);
    if (!lines || lines.collectors.length === 0 || width < LEAST_WIDTH) return html`${nothing}`;
    const drawn = collectorsPlot(lines, width, (name) => textSize(name, NAME_SIZE).width, units);
    const { left, right, top, bottom } = drawn.frame.inner;
    return html`<div class="figure">
      <svg
        class="plot"
        role="img"
        aria-label=${this.label}
        width=${width}
        height=${drawn.height}
        viewBox="0 0 ${this.#size.width} ${drawn.height}"
      >
        <clipPath id="frame">
          <rect x=${left} y=${top} width=${right - left} height=${bottom - top} />
        </clipPath>
        ${axesOf(drawn)}
        ${drawn.collectors.map(({ doubt }) => svg`<path class="doubt-flow" clip-path="url(#frame)" d=${doubt} />`)}
        <path class="doubt-speed" clip-path="url(#frame)" d=${drawn.systemDoubt} />
        ${drawn.collectors.map(({ line }, i) => curveOf(line, lines.collectors[i]!.origin))}
        <path class="system" clip-path="url(#frame)" d=${drawn.system} />
        ${
          drawn.systemLabel
            ? svg`<text class="name ducts over-grid end" x=${drawn.systemLabel.x} y=${drawn.systemLabel.y}>ducts</text>`
            : nothing
        }
        ${drawn.collectors.map((each, i) => namedPoint(each, lines.collectors[i]!.origin))}
      </svg>
      <dc-plot-reader
        label="collectors on the ducts"
        .readable=${() => readable(drawn, lines, units)}
      ></dc-plot-reader>
    </div>`;
  }
}

function axesOf({ frame, flow, pressure }: Drawn): SVGTemplateResult {
  const { left, right, top, bottom } = frame.inner;
  return svg`${pressure.ticks.map(
    ({ value, label }) => svg`<line
        class="grid" x1=${left} x2=${right} y1=${frame.y(value)} y2=${frame.y(value)} />
      <text class="tick-y" x=${left - 8} y=${frame.y(value)}>${label}</text>`,
  )}
  ${flow.ticks.map(
    ({ value, label }) => svg`<line
        class="axis" x1=${frame.x(value)} x2=${frame.x(value)} y1=${bottom} y2=${bottom + 4} />
      <text class="tick-x" x=${frame.x(value)} y=${bottom + 18}>${label}</text>`,
  )}
  <line class="axis" x1=${left} x2=${left} y1=${top} y2=${bottom} />
  <line class="axis" x1=${left} x2=${right} y1=${bottom} y2=${bottom} />
  <text class="title" x="0" y="13">suction at the collector, ${pressure.unit}</text>
  <text class="title end" x=${right} y=${bottom + 37}>air flow, ${flow.unit}</text>`;
}

function curveOf(line: DrawnCollector['line'], origin: CurveOrigin): SVGTemplateResult {
  return svg`<path class="collector ${origin}" clip-path="url(#frame)" d=${line.known} />
    ${line.unknown.map((path) => svg`<path class="unknown" clip-path="url(#frame)" d=${path} />`)}`;
}

function namedPoint(
  { short, point, label, side }: DrawnCollector,
  origin: CurveOrigin,
): SVGTemplateResult {
  if (!point || !label) return svg``;
  const near = label.x + (side === 'right' ? -2 : 2);
  return svg`<line class="leader" x1=${point.x} y1=${point.y} x2=${near} y2=${label.y} />
    <circle class="point ${origin}" cx=${point.x} cy=${point.y} r=${origin === 'today' ? 7 : 5} />
    <text class="name over-grid ${side === 'left' ? 'end' : ''} ${origin === 'today' ? 'strong' : ''}"
      x=${label.x} y=${label.y}>${short}</text>`;
}

function readable(
  { collectors, frame }: Drawn,
  lines: CollectorsLines,
  units: UnitSystem,
): Readable {
  const stops = collectors
    .flatMap(({ name, point }, i) => {
      const { point: at, pointDoubt } = lines.collectors[i]!;
      return point && at ? [{ name, point, at, pointDoubt }] : [];
    })
    .toSorted((a, b) => a.point.x - b.point.x);
  return {
    lines: [
      {
        name: 'on the ducts',
        places: stops.map(({ point }) => point),
        read: (stop) => {
          const { name, at, pointDoubt } = stops[stop]!;
          return {
            figures: [
              name,
              formatQuantity('flow', units, at.flow).text,
              formatQuantity('pressure', units, at.suction).text,
              ...(pointDoubt ? [pointDoubtWords(pointDoubt, units)] : []),
            ],
          };
        },
      },
    ],
    page: frame.inner,
    obstacles: { strokes: [], boxes: [] },
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-collectors-plot': CollectorsPlot;
  }
}
