// A drop over the length added to its run: air above, lowest speed below, each with its limit, and a
// marker where the first thing gives out.

import { html, LitElement, nothing, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import {
  type ReachLines,
  type ReachPanel,
  type ReachPlot as Drawn,
  reachPlot,
} from '../../plot/reach-plot.ts';
import type { Readable, ReadLine } from '../../plot/reading.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { panelAxes } from '../line-panel/panel-axes.ts';
import '../plot-figure/plot-reader.ts';
import { SizeController } from '../size-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { linePanelStyles } from '../styles/line-panel.styles.ts';

/** Without it there is no room for axes [px]. */
const LEAST_WIDTH = 220;
/** A label over the marker turns to its left where there is less room on its right [px]. */
const LABEL_ROOM = 150;

/** @element dc-reach-plot */
@customElement('dc-reach-plot')
export class ReachPlot extends LitElement {
  static override styles = [baseStyles, linePanelStyles];

  /** The picture in a sentence, for those who don't see it. */
  @property() label = '';
  @property({ attribute: false }) units: UnitSystem = 'us';
  @property({ attribute: false }) lines: ReachLines | undefined;
  /** Where the drop's reach ends, within the plot [m] */
  @property({ attribute: false }) reach: number | undefined;
  /** The length that is wanted [m] */
  @property({ attribute: false }) wanted: number | undefined;

  readonly #size = new SizeController(this);

  /** The plot as one picture, to be saved. */
  get picture(): SVGSVGElement | null {
    return this.renderRoot.querySelector('svg.plot');
  }

  protected override render(): TemplateResult {
    const { lines, units } = this;
    const { scale } = this.#size;
    const width = Math.min(this.#size.width, 900);
    if (!lines || lines.stops.length < 2 || width < LEAST_WIDTH) return html`${nothing}`;
    const drawn = reachPlot(lines, width, units);
    return html`<div class="figure">
      <svg
        class="plot"
        role="img"
        aria-label=${this.label}
        width=${scale * width}
        height=${scale * drawn.height}
        viewBox="0 0 ${this.#size.width} ${drawn.height}"
      >
        ${this.#panels(drawn, lines)}
      </svg>
      <dc-plot-reader label="how far it reaches" .scale=${scale} .readable=${() => readable(drawn, lines, units)}></dc-plot-reader>
    </div>`;
  }

  #panels({ flow, slowest }: Drawn, { need, range }: ReachLines): SVGTemplateResult {
    const { units } = this;
    const speeds = slowest.panel;
    const [low, high] = [speeds.y(range.low), speeds.y(range.high)];
    const { left, right } = speeds.inner;
    const across = speeds.across.unit;
    const markers = [
      { length: this.wanted, words: 'wanted', kind: 'limit', lower: 0 } as const,
      { length: this.reach, words: 'gives out', kind: 'marker', lower: 16 } as const,
    ].flatMap(({ length, ...how }) => {
      const x = length === undefined ? Number.NaN : flow.panel.x(length);
      return x <= right ? [{ ...how, x }] : [];
    });
    return svg`
      <rect class="carrying" x=${left} width=${right - left} y=${high} height=${low - high} />
      ${panelAxes(flow.panel, { up: `air at the machine, ${flow.panel.up.unit}` })}
      ${panelAxes(speeds, { up: `slowest on its way, ${speeds.up.unit}`, across: `added length, ${across}` })}
      <path class="doubt-flow" d=${flow.doubt} /><path class="doubt-speed" d=${slowest.doubt} />
      ${need === undefined ? nothing : limitAt(flow, need, `needs ${formatQuantity('flow', units, need).text}`)}
      ${limitAt(slowest, range.low, `carries from ${formatQuantity('velocity', units, range.low).text}`)}
      <path class="flow-line" d=${flow.line} /><path class="speed-line" d=${slowest.line} />
      ${markers.map(({ x, kind }) => markerLine(flow, slowest, x, kind))}
      ${markers.map((marker) => markerName(flow, marker))}`;
  }
}

function limitAt({ panel }: ReachPanel, value: number, words: string): SVGTemplateResult {
  const { left, right } = panel.inner;
  const y = panel.y(value);
  return svg`<line class="limit" x1=${left} x2=${right} y1=${y} y2=${y} />
    <text class="over-grid end" x=${right - 4} y=${y + 15}>${words}</text>`;
}

/** A length that is marked in both panels. */
interface Marker {
  /** [px] */
  readonly x: number;
  readonly words: string;
  readonly kind: 'limit' | 'marker';
  /** How far below the top its name stands [px]. */
  readonly lower: number;
}

/** A line through both panels, but not through the words between them. */
function markerLine(
  flow: ReachPanel,
  slowest: ReachPanel,
  x: number,
  kind: Marker['kind'],
): SVGTemplateResult[] {
  return [flow, slowest].map(
    ({ panel: { inner } }) =>
      svg`<line class=${kind} x1=${x} x2=${x} y1=${inner.top} y2=${inner.bottom} />`,
  );
}

/** Names come after all lines, so that none goes through a name. */
function markerName({ panel }: ReachPanel, { x, words, kind, lower }: Marker): SVGTemplateResult {
  const { top, right } = panel.inner;
  const isLeft = x > right - LABEL_ROOM;
  return svg`<text class="over-grid ${isLeft ? 'end' : ''} ${kind === 'marker' ? 'strong' : ''}"
    x=${x + (isLeft ? -6 : 6)} y=${top + 12 + lower}>${words}</text>`;
}

function readable(
  { flow, slowest, height }: Drawn,
  { stops }: ReachLines,
  units: UnitSystem,
): Readable {
  const line = (
    name: string,
    quantity: 'flow' | 'velocity',
    { places, at }: ReachPanel,
    what: 'flow' | 'slowest',
  ): ReadLine => ({
    name,
    places,
    read: (k) => {
      const stop = stops[at[k]!]!;
      return {
        figures: [
          formatQuantity(quantity, units, stop[what]!).text,
          `${formatQuantity('length', units, stop.length).text} added`,
        ],
      };
    },
  });
  const { left, right, top } = flow.panel.inner;
  return {
    lines: [
      line('air at the machine', 'flow', flow, 'flow'),
      line('slowest on its way', 'velocity', slowest, 'slowest'),
    ].filter(({ places }) => places.length > 0),
    page: { left, right, top, bottom: height },
    obstacles: { strokes: [], boxes: [] },
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-reach-plot': ReachPlot;
  }
}
