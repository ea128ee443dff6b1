// Where the suction goes: the way from the hood at the top down to the collector, a row a part, with
// the total and the static suction after each. The parts that take most are drawn and written strong.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { guard } from 'lit/directives/guard.js';
import type { Readable } from '../../plot/reading.ts';
import { type SuctionPath, suctionPath } from '../../plot/suction-path.ts';
import type { SuctionStep } from '../../state/suction-view.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import '../plot-figure/plot-reader.ts';
import { SizeController } from '../size-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { rowPlotStyles } from '../styles/row-plot.styles.ts';
import { suctionPlotStyles } from './suction-plot.styles.ts';
import { axisAt, headsAt, lineLabels, MUCH, rowAt } from './way-drawing.ts';
import { brokenLines, rowHeight, wayColumns } from './way-labels.ts';

/** Room for ticks and titles above the rows, and for the lines' labels below them [px]. */
const HEAD = 44;
const FOOT = 26;
/** Paper between the names and the plot [px]. */
const GAP = 12;
/** Without it there is no room for names and plot [px]. */
const LEAST_WIDTH = 240;

/**
 * The plot of suction along a way.
 *
 * @element dc-suction-plot
 */
@customElement('dc-suction-plot')
export class SuctionPlot extends LitElement {
  static override styles = [baseStyles, rowPlotStyles, suctionPlotStyles];

  /** The picture in a sentence, for those who don't see it. */
  @property() label = '';
  @property({ attribute: false }) units: UnitSystem = 'us';
  /** The unit of suction. */
  @property() unit = '';
  @property({ attribute: false }) steps: readonly SuctionStep[] = [];
  /** The same steps as they are written; they may come a little after the lines while gates move. */
  @property({ attribute: false }) written: readonly SuctionStep[] | undefined;
  /** Suction at the end of the axis, so that it stays put while gates move [Pa] */
  @property({ type: Number }) end = 1;

  readonly #size = new SizeController(this);
  /** Names as they were broken last, in order and by the room and the name: gates move, names stay. */
  #names: readonly (readonly string[])[] = [];
  #broken: ReadonlyMap<string, readonly string[]> = new Map();

  /** The plot as one picture, to be saved. */
  get picture(): SVGSVGElement | null {
    return this.renderRoot.querySelector('svg.plot');
  }

  protected override render(): TemplateResult {
    const { steps } = this;
    const { width, scale } = this.#size;
    if (steps.length === 0 || width < LEAST_WIDTH) return html`${nothing}`;
    const columns = wayColumns(width);
    const names = this.#namesIn(columns.names - GAP);
    const written = this.written?.length === steps.length ? this.written : steps;
    const end = Math.max(this.end, ...steps.map((step) => step.static));
    const path = suctionPath(
      steps,
      {
        left: columns.names + GAP,
        right: width - columns.losses - columns.shares,
        top: HEAD,
        heights: names.map(rowHeight),
        end,
      },
      this.units,
    );
    const height = path.inner.bottom + FOOT;
    return html`<div class="figure">
      <svg
        class="plot"
        role="img"
        aria-label=${this.label}
        width=${scale * width}
        height=${scale * height}
        viewBox="0 0 ${width} ${height}"
      >
        ${guard([names, width, end, this.units], () => [
          axisAt(path, this.unit),
          headsAt(path, columns, width),
        ])}
        <path class="between" d=${path.between} />
        <path class="much" d=${muchOf(path, steps)} />
        <path class="total" d=${path.total} />
        <path class="static" d=${path.static} />
        ${guard([names, width, written], () =>
          written.map((step, i) => rowAt(step, names[i]!, path, i, columns, width)),
        )}
        ${lineLabels(path, steps.at(-1)!)}
      </svg>
      <dc-plot-reader
        label="where the suction goes"
        .scale=${scale}
        .readable=${() => readable(path, steps, this.unit)}
      ></dc-plot-reader>
    </div>`;
  }

  #namesIn(room: number): readonly (readonly string[])[] {
    const broken = new Map<string, readonly string[]>();
    const names = this.steps.map(({ words }) => {
      const key = `${room} ${words}`;
      const lines = this.#broken.get(key) ?? brokenLines(words, room);
      broken.set(key, lines);
      return lines;
    });
    this.#broken = broken;
    const isSame =
      names.length === this.#names.length && names.every((name, i) => name === this.#names[i]);
    if (!isSame) this.#names = names;
    return this.#names;
  }
}

/** The strokes of the parts that take much. */
function muchOf({ rows }: SuctionPath, steps: readonly SuctionStep[]): string {
  return rows.map(({ stroke }, i) => (steps[i]!.part >= MUCH ? stroke : '')).join('');
}

function readable(path: SuctionPath, steps: readonly SuctionStep[], unit: string): Readable {
  const { left, right, top, bottom } = path.inner;
  const line = (name: 'total' | 'static') => ({
    name: `${name} suction`,
    places: path.rows.map((row) => row[name]),
    read: (stop: number) => {
      const { words, loss, share, totalText, staticText } = steps[stop]!;
      const after = name === 'total' ? totalText : staticText;
      return {
        figures: [`${after}\u2009${unit} after the ${words}`, `lost in it ${loss}, ${share}`],
      };
    },
  });
  return {
    lines: [line('total'), line('static')],
    page: { left: left + 4, right, top, bottom },
    obstacles: { strokes: [], boxes: [] },
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-suction-plot': SuctionPlot;
  }
}
