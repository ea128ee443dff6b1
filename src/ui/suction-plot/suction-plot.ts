// Where the suction goes: the way from the hood at the top down to the collector, a row a part, with
// the total and the static suction after each. The parts that take most are drawn and written strong.

import { html, LitElement, nothing, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Readable } from '../../plot/reading.ts';
import { type SuctionPath, suctionPath } from '../../plot/suction-path.ts';
import type { SuctionStep } from '../../state/suction-view.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import '../plot-figure/plot-reader.ts';
import { SizeController } from '../size-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { rowPlotStyles } from '../styles/row-plot.styles.ts';
import { suctionPlotStyles } from './suction-plot.styles.ts';
import { brokenLines, lineMiddle, rowHeight, wayColumns, type WayColumns } from './way-labels.ts';

/** Room for ticks and titles above the rows, and for the lines' labels below them [px]. */
const HEAD = 44;
const FOOT = 26;
/** Paper between the names and the plot [px]. */
const GAP = 12;
/** A part that takes so much of all is drawn strong [-]. */
const MUCH = 0.095;
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
  /** Names as they were broken last, by the room and the name: gates move, names stay. */
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
    const path = suctionPath(
      steps,
      {
        left: columns.names + GAP,
        right: width - columns.losses - columns.shares,
        top: HEAD,
        heights: names.map(rowHeight),
        end: Math.max(this.end, ...steps.map((step) => step.static)),
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
        ${axisAt(path, this.unit)} ${headsAt(path, columns, width)}
        <path class="between" d=${path.between} />
        ${path.rows.map(({ stroke }, i) =>
          steps[i]!.part >= MUCH ? svg`<path class="much" d=${stroke} />` : nothing,
        )}
        <path class="total" d=${path.total} />
        <path class="static" d=${path.static} />
        ${written.map((step, i) => rowAt(step, names[i]!, path, i, columns, width))}
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
    return names;
  }
}

function axisAt({ axis, inner, x }: SuctionPath, unit: string): SVGTemplateResult {
  const { top, bottom, left } = inner;
  return svg`${axis.ticks.map(
    ({ value, label }, i) => svg`<line
        class=${i === 0 ? 'room' : 'grid'}
        x1=${x(value)} x2=${x(value)} y1=${top - 4} y2=${bottom}
      />
      <text class="tick" x=${x(value)} y=${top - 9}>${label}</text>`,
  )}
  <text class="title" x=${left - 4} y="13">suction, ${unit}</text>`;
}

function headsAt({ inner }: SuctionPath, columns: WayColumns, width: number): SVGTemplateResult {
  const y = inner.top - 9;
  return svg`<text class="title" x="0" y=${y}>from the hood down</text>
    ${columns.losses > 0 ? svg`<text class="head" x=${width - columns.shares} y=${y}>lost</text>` : nothing}
    <text class="head" x=${width} y=${y}>share</text>`;
}

function rowAt(
  { loss, share, part, begins }: SuctionStep,
  lines: readonly string[],
  { rows, inner }: SuctionPath,
  i: number,
  columns: WayColumns,
  width: number,
): SVGTemplateResult {
  const { top, bottom } = rows[i]!;
  const middle = (top + bottom) / 2;
  const strong = part >= MUCH ? 'strong' : '';
  return svg`${
    begins
      ? svg`<line class="section" x1="0" x2=${inner.left - 6} y1=${top} y2=${top} /><line
          class="section" x1=${inner.right + 6} x2=${width} y1=${top} y2=${top} />`
      : nothing
  }
  ${lines.map(
    (line, at) =>
      svg`<text class=${strong} x="0" y=${lineMiddle(lines.length, at, middle)}>${line}</text>`,
  )}
  ${
    columns.losses > 0
      ? svg`<text class="loss ${strong}" x=${width - columns.shares} y=${middle}>${loss}</text>`
      : nothing
  }
  <text class="share ${strong}" x=${width} y=${middle}>${share}</text>`;
}

function lineLabels({ rows, inner }: SuctionPath, last: SuctionStep): SVGTemplateResult {
  const end = rows.at(-1)!;
  const y = inner.bottom + 13;
  return svg`<text class="label-total" x=${end.total.x + 4} y=${y}>total ${last.totalText}</text>
    <text class="label-static" x=${Math.max(end.static.x - 4, end.total.x + 16)} y=${y}
      >static ${last.staticText}</text>`;
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
