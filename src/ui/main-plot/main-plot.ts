// Small pictures side by side, one a drop: air and speed in the main over the size of the main.

import { html, LitElement, nothing, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import {
  type MainMultiple,
  type MainMultiples,
  mainMultiples,
  type MainSeries,
} from '../../plot/main-multiples.ts';
import type { Readable, ReadLine } from '../../plot/reading.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import '../plot-figure/plot-reader.ts';
import { Portions } from '../portions.ts';
import { SizeController } from '../size-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { linePanelStyles } from '../styles/line-panel.styles.ts';

/** Without it there is no room for a picture [px]. */
const LEAST_WIDTH = 200;
/** Pictures that are drawn in a frame. */
const PORTION = 2;
/** A size is named where its name has so much room [px]. */
const NAME_ROOM = 34;

/** @element dc-main-plot */
@customElement('dc-main-plot')
export class MainPlot extends LitElement {
  static override styles = [baseStyles, linePanelStyles];

  /** The picture in a sentence, for those who don't see it. */
  @property() label = '';
  @property({ attribute: false }) units: UnitSystem = 'us';
  @property({ attribute: false }) series: readonly MainSeries[] = [];
  /** Names of the sizes, in the order of the stops. */
  @property({ attribute: false }) sizes: readonly string[] = [];
  @property({ attribute: false }) range:
    | { readonly low: number; readonly high: number }
    | undefined;

  readonly #size = new SizeController(this);
  readonly #portions = new Portions<SVGTemplateResult>(this, PORTION);
  #drawn: MainMultiples | undefined;
  #drawnFor: readonly unknown[] = [];

  /** The pictures as one, to be saved. */
  get picture(): SVGSVGElement | null {
    return this.renderRoot.querySelector('svg.plot');
  }

  protected override render(): TemplateResult {
    const { series, sizes, range } = this;
    const { width } = this.#size;
    if (series.length === 0 || sizes.length < 2 || !range || width < LEAST_WIDTH) {
      return html`${nothing}`;
    }
    const drawn = this.#multiples(range, width);
    const shown = this.#portions.fill(drawn.multiples.length, (i) =>
      this.#multiple(drawn.multiples[i]!, series[i]!, range),
    );
    return html`<div class="figure">
      <svg
        class="plot"
        role="img"
        aria-label=${this.label}
        aria-busy=${this.#portions.isWhole ? nothing : 'true'}
        width=${width}
        height=${drawn.height}
        viewBox="0 0 ${width} ${drawn.height}"
      >
        ${shown}
      </svg>
      <dc-plot-reader
        label="every drop over the size of the main"
        .readable=${() => readable(drawn, this)}
      ></dc-plot-reader>
    </div>`;
  }

  /** Laid out anew only for other figures, or another size. */
  #multiples(range: { readonly low: number; readonly high: number }, width: number): MainMultiples {
    const { series, sizes, units } = this;
    const wanted = [series, sizes, units, range, width];
    if (this.#drawn && wanted.every((value, i) => value === this.#drawnFor[i])) return this.#drawn;
    this.#drawnFor = wanted;
    this.#drawn = mainMultiples(series, range, width, units);
    this.#portions.restart();
    return this.#drawn;
  }

  #multiple(
    multiple: MainMultiple,
    { name, today }: MainSeries,
    range: { readonly low: number; readonly high: number },
  ): SVGTemplateResult {
    const { flow, speed, top, left } = multiple;
    const { right } = flow.inner;
    const high = speed.y(range.high);
    const at = flow.y(today);
    return svg`<text class="strong" x=${left} y=${top + 16}>${name}</text>
      <rect class="carrying" x=${left} width=${right - left} y=${high} height=${speed.y(range.low) - high} />
      ${[flow, speed].map((panel) => axesOf(panel, multiple.isFirst))}
      <path class="doubt-flow" d=${multiple.flowDoubt} /><path class="doubt-speed" d=${multiple.speedDoubt} />
      <line class="limit" x1=${left} x2=${right} y1=${at} y2=${at} />
      <path class="flow-line" d=${multiple.flowLine} /><path class="speed-line" d=${multiple.speedLine} />
      ${this.#sizeNames(multiple)}`;
  }

  /** As many as have room, the first among them. */
  #sizeNames({ across, speed }: MainMultiple): SVGTemplateResult {
    const step = (across[1] ?? 0) - (across[0] ?? 0);
    const every = Math.max(1, Math.ceil(NAME_ROOM / Math.max(1, step)));
    const { bottom } = speed.inner;
    return svg`${this.sizes.map((name, i) =>
      i % every === 0
        ? svg`<line class="axis" x1=${across[i]} x2=${across[i]} y1=${bottom} y2=${bottom + 4} />
          <text class="tick-x" x=${across[i]} y=${bottom + 17}>${name.replace(/\s?(?:in\.|mm)$/, '')}</text>`
        : nothing,
    )}`;
  }
}

function axesOf({ inner, up, y }: MainMultiple['flow'], isFirst: boolean): SVGTemplateResult {
  const { left, right, top, bottom } = inner;
  return svg`${up.ticks.map(
    ({
      value,
      label,
    }) => svg`<line class="grid" x1=${left} x2=${right} y1=${y(value)} y2=${y(value)} />
      ${isFirst ? svg`<text class="tick-y" x=${left - 6} y=${y(value)}>${label}</text>` : nothing}`,
  )}
  <line class="axis" x1=${left} x2=${left} y1=${top} y2=${bottom} />
  <line class="axis" x1=${left} x2=${right} y1=${bottom} y2=${bottom} />`;
}

function readable({ multiples, height }: MainMultiples, plot: MainPlot): Readable {
  const { units, series, sizes } = plot;
  const lines = multiples.flatMap((multiple, i): ReadLine[] => {
    const { name, stops } = series[i]!;
    const speeds = multiple.speedPlaces.flatMap((place, k) => (place ? [{ place, k }] : []));
    const air: ReadLine = {
      name: `${name}, air`,
      places: multiple.flowPlaces,
      read: (k) => ({
        figures: [formatQuantity('flow', units, stops[k]!.flow).text, `main of ${sizes[k]}`],
      }),
    };
    const speed: ReadLine = {
      name: `${name}, slowest in the main`,
      places: speeds.map(({ place }) => place),
      read: (at) => {
        const { k } = speeds[at]!;
        const text = formatQuantity('velocity', units, stops[k]!.speed ?? 0).text;
        return { figures: [text, `main of ${sizes[k]}`] };
      },
    };
    return speeds.length === 0 ? [air] : [air, speed];
  });
  const [first] = multiples;
  const last = multiples.reduce((a, b) => (b.flow.inner.right > a.flow.inner.right ? b : a));
  return {
    lines,
    page: { left: first!.left, right: last.flow.inner.right, top: 0, bottom: height },
    obstacles: { strokes: [], boxes: [] },
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-main-plot': MainPlot;
  }
}
