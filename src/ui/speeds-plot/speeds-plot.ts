// The speed at each drop on one scale: a solid mark for the drop's own pipe, a hollow one for the
// slowest section on its way, and both as dashed outlines where they stood before the last change.
// (A little over 200 lines: every mark of one row stands here.)

import { html, LitElement, nothing, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { guard } from 'lit/directives/guard.js';
import type { Place } from '../../plot/frame.ts';
import type { Readable, ReadLine } from '../../plot/reading.ts';
import { type DrawnRow, type SpeedMark, type SpeedRows, speedRows } from '../../plot/speed-rows.ts';
import type { SpeedRow, SpeedsView } from '../../state/speeds-view.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import '../plot-figure/plot-reader.ts';
import { SizeController } from '../size-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { rowPlotStyles } from '../styles/row-plot.styles.ts';
import { speedMarkStyles } from '../styles/speed-mark.styles.ts';
import { VERDICT_SHAPES } from '../verdict/verdict-shape.ts';
import { verdictShapeStyles } from '../verdict/verdict-shape.styles.ts';
import { verdictWord } from '../verdict/verdict-word.ts';
import { speedsPlotStyles } from './speeds-plot.styles.ts';

/** Room above the rows for the scale, and below them [px]. */
const HEAD = 42;
const FOOT = 6;
const PITCH = 30;
/** Without it there is no room for names and scale [px]. */
const LEAST_WIDTH = 240;
/** With it there is room for the verdict's word [px]. */
const WIDE = 520;
/** A change of place that can be seen [px]. */
const LEAST_MOVE = 4;

const OWN = 'M0,0L-5.5,-9V-14H5.5V-9Z';
const OWN_PAST_END = 'M6,-7L-4,-14V0Z';
const SLOWEST = 'M0,1.5L4.5,8.5H-4.5Z';

/** @element dc-speeds-plot */
@customElement('dc-speeds-plot')
export class SpeedsPlot extends LitElement {
  static override styles = [
    baseStyles,
    verdictShapeStyles,
    rowPlotStyles,
    speedMarkStyles,
    speedsPlotStyles,
  ];

  /** The picture in a sentence, for those who don't see it. */
  @property() label = '';
  @property({ attribute: false }) units: UnitSystem = 'us';
  @property({ attribute: false }) view: SpeedsView | undefined;
  /** The same rows as they are written; they may come a little after the marks while gates move. */
  @property({ attribute: false }) written: readonly SpeedRow[] | undefined;
  /** Id of the drop that is looked at. */
  @property() selected: string | undefined;

  readonly #size = new SizeController(this);

  /** The plot as one picture, to be saved. */
  get picture(): SVGSVGElement | null {
    return this.renderRoot.querySelector('svg.plot');
  }

  protected override render(): TemplateResult {
    const { view } = this;
    const { width, scale } = this.#size;
    if (!view || view.rows.length === 0 || width < LEAST_WIDTH) return html`${nothing}`;
    const isWide = width >= WIDE;
    const names = Math.min(150, Math.round(0.34 * width));
    const right = width - (isWide ? 164 : 76);
    const drawn = speedRows(
      view.rows.map(speedsOf),
      view.range,
      { left: names, right, top: HEAD, pitch: PITCH },
      this.units,
    );
    const height = drawn.inner.bottom + FOOT;
    const written = view.rows.map((row, i) => {
      const told = this.written?.[i];
      return told?.drop.id === row.drop.id ? told : row;
    });
    return html`<div class="figure">
      <svg
        class="plot"
        role="img"
        aria-label=${this.label}
        width=${scale * width}
        height=${scale * height}
        viewBox="0 0 ${width} ${height}"
      >
        ${view.rows.map(({ drop }, i) =>
          drop.id === this.selected
            ? svg`<rect class="selected" x="-6" y=${drawn.rows[i]!.top + 1} width=${width + 12} height=${PITCH - 2} />`
            : nothing,
        )}
        ${scaleAt(drawn, view)}
        ${view.rows.map((row, i) => marksAt(row, drawn.rows[i]!, drawn))}
        ${written.map(({ drop }, i) =>
          guard([drop, width], () => wordsAt(drop, drawn.rows[i]!, drawn, isWide)),
        )}
      </svg>
      <dc-plot-reader
        label="speed at each drop"
        .scale=${scale}
        .readable=${() => readable(drawn, view)}
      ></dc-plot-reader>
    </div>`;
  }
}

function speedsOf({ drop, former }: SpeedRow) {
  return {
    own: drop.speed?.velocity,
    slowest: drop.slowest?.velocity,
    formerOwn: former?.speed?.velocity,
    formerSlowest: former?.slowest?.velocity,
  };
}

function scaleAt({ axis, band, inner, x }: SpeedRows, { unit }: SpeedsView): SVGTemplateResult {
  const { top, bottom, left } = inner;
  return svg`<rect class="band" x=${band.left} y=${top} width=${band.right - band.left} height=${bottom - top} />
    ${[band.left, band.right].map(
      (at) => svg`<line class="band-end" x1=${at} x2=${at} y1=${top} y2=${bottom} />`,
    )}
    <line class="room" x1=${left} x2=${left} y1=${top} y2=${bottom} />
    ${axis.ticks.map(
      ({ value, label }) => svg`<text class="tick" x=${x(value)} y=${top - 6}>${label}</text>`,
    )}
    <text class="title" x="0" y=${top - 6}>speed, ${unit}</text>
    <text class="band-label" x=${(band.left + band.right) / 2} y="14">carries</text>`;
}

function marksAt(
  { former }: SpeedRow,
  row: DrawnRow,
  { inner, band }: SpeedRows,
): SVGTemplateResult {
  const tone = (at: SpeedMark) => (at.x < band.left ? 'settles' : at.x > band.right ? 'tight' : '');
  return svg`<line class="row" x1=${inner.left} x2=${inner.right} y1=${row.base} y2=${row.base} />
    ${former === undefined ? nothing : ghosts(row)}
    ${row.slowest ? markAt('slowest', SLOWEST, row.slowest, row.base, tone(row.slowest)) : nothing}
    ${
      row.own
        ? markAt('own', row.own.isPastEnd ? OWN_PAST_END : OWN, row.own, row.base, tone(row.own))
        : nothing
    }`;
}

function wordsAt(
  { name, speed, verdict }: SpeedRow['drop'],
  row: DrawnRow,
  { inner }: SpeedRows,
  isWide: boolean,
): SVGTemplateResult {
  const middle = (row.top + row.bottom) / 2;
  return svg`<text class=${speed ? 'name open' : 'name'} x="0" y=${middle}>${name}</text>
    ${
      speed === undefined
        ? nothing
        : svg`<text class="speed ${verdict}" x=${inner.right + 54} y=${middle}>${speed.shown.number}</text>
          <g transform="translate(${inner.right + 68},${middle})">${VERDICT_SHAPES[verdict]}</g>
          ${
            isWide
              ? svg`<text class="where" x=${inner.right + 82} y=${middle}>${verdictWord(verdict)}</text>`
              : nothing
          }`
    }`;
}

function markAt(
  kind: string,
  path: string,
  { x }: SpeedMark,
  base: number,
  tone: string,
): SVGTemplateResult {
  return svg`<path class="${kind} ${tone}" transform="translate(${x},${base})" d=${path} />`;
}

/** Where the marks stood, and a stroke from there to where they stand. */
function ghosts({ formerOwn, formerSlowest, own, slowest, base }: DrawnRow): SVGTemplateResult {
  const moved = (from: SpeedMark, to: SpeedMark | undefined) =>
    to === undefined || Math.abs(to.x - from.x) >= LEAST_MOVE;
  return svg`${
    formerSlowest && moved(formerSlowest, slowest)
      ? svg`<path class="ghost" transform="translate(${formerSlowest.x},${base})" d=${SLOWEST} />`
      : nothing
  }
  ${
    formerOwn && moved(formerOwn, own)
      ? svg`<path class="ghost" transform="translate(${formerOwn.x},${base})" d=${OWN} />
        ${own ? svg`<path class="moved" d=${arrow(formerOwn.x, own.x, base - 8)} />` : nothing}`
      : nothing
  }`;
}

/** An arrow from mark to mark, where there is room between them. */
function arrow(from: number, to: number, y: number): string {
  const way = Math.sign(to - from);
  const start = from + 7 * way;
  const end = to - 8 * way;
  if ((end - start) * way < 6) return '';
  return `M${start},${y}H${end}m${-4 * way},-3l${4 * way},3l${-4 * way},3`;
}

function readable({ rows, inner }: SpeedRows, view: SpeedsView): Readable {
  const lines = view.rows.flatMap(({ drop, former }, i): ReadLine[] => {
    const row = rows[i]!;
    const stops: { place: Place; text: string }[] = [];
    const add = (mark: SpeedMark | undefined, text: string) => {
      if (mark) stops.push({ place: { x: mark.x, y: row.base }, text });
    };
    const speed = (shown: { readonly text: string } | undefined) => shown?.text ?? '';
    add(row.own, `${speed(drop.speed?.shown)} in its own pipe, ${verdictWord(drop.verdict)}`);
    add(row.slowest, `${speed(drop.slowest?.shown)} in ${drop.slowest?.name}, the slowest`);
    add(row.formerOwn, `before: ${speed(former?.speed?.shown)} in its own pipe`);
    add(row.formerSlowest, `before: ${speed(former?.slowest?.shown)} in the slowest`);
    if (stops.length === 0) return [];
    return [
      {
        name: drop.name,
        places: stops.map(({ place }) => place),
        read: (stop) => ({ figures: [stops[stop]!.text] }),
      },
    ];
  });
  return {
    lines,
    page: { ...inner, bottom: inner.bottom + FOOT, top: 4 },
    obstacles: { strokes: [], boxes: [] },
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-speeds-plot': SpeedsPlot;
  }
}
