// Reads values off a plot: a mark on the nearest line, what it reads written beside it and spoken.
// It lies over the plot's picture and is drawn by itself, so that reading doesn't redraw the plot.
// (A little over 200 lines: pointer, keys and what is written and spoken go together.)
//
// How a plot adopts it: lay it over the picture in a box of `position: relative` and hand it a
// function that says what can be read, `.readable=${() => …}`. A new function says that the plot has
// changed; it is called only while someone reads.

import { html, LitElement, nothing, type PropertyValues, svg, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Box, Place } from '../../plot/frame.ts';
import {
  type LabelSize,
  type LabelSpot,
  placeAnywhere,
  placeLabel,
} from '../../plot/place-label.ts';
import {
  keptStop,
  nearestStop,
  type Readable,
  type ReadPosition,
  spokenReading,
  stepAcross,
  stepAlong,
} from '../../plot/reading.ts';
import { textSize } from '../operating-plot/text-size.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { plotReaderStyles } from './plot-reader.styles.ts';

const FONT_SIZE = 13;
const ROW = 17;
const LONG_STEP = 10;
/** How far a key steps along a line [stops]. */
const ALONG: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowLeft: -1,
  PageUp: LONG_STEP,
  PageDown: -LONG_STEP,
  Home: Number.NEGATIVE_INFINITY,
  End: Number.POSITIVE_INFINITY,
};
/** How far a key steps from line to line. */
const ACROSS: Readonly<Record<string, number>> = { ArrowUp: -1, ArrowDown: 1 };

/**
 * The reader of a plot. Pointer and touch read at the nearest stop; with the focus on it, left and
 * right step along a line (Shift: ten stops), Home and End go to its ends, up and down to the line
 * before and after, Escape leaves.
 *
 * @element dc-plot-reader
 */
@customElement('dc-plot-reader')
export class PlotReader extends LitElement {
  static override styles = [baseStyles, plotReaderStyles];

  /** What is read, such as "operating plot". */
  @property() label = 'plot';
  @property({ attribute: false }) readable: (() => Readable) | undefined;
  /** How many times larger than laid out the plot is shown [-]. */
  @property({ attribute: false }) scale = 1;

  @state() private at: ReadPosition | undefined;

  #spot: LabelSpot | undefined;
  #left: ReadPosition | undefined;
  #isFocused = false;

  protected override shouldUpdate(changed: PropertyValues<this>): boolean {
    const onlyPlotChanged = changed.size === 1 && changed.has('readable');
    return !onlyPlotChanged || this.at !== undefined || !this.hasUpdated;
  }

  protected override render(): TemplateResult {
    const readable = this.at && this.readable?.();
    const at = readable && this.at && keptStop(readable.lines, this.at);
    const line = at && readable.lines[at.line];
    return html`<div
        class="reader"
        role="slider"
        tabindex="0"
        aria-label="Read along the lines: ${this.label}"
        aria-valuemin="1"
        aria-valuemax=${line?.places.length ?? 1}
        aria-valuenow=${(at?.stop ?? 0) + 1}
        aria-valuetext=${
          line
            ? spokenReading(line, at.stop)
            : 'left and right along a line, up and down between lines'
        }
        @focus=${() => this.#onFocus()}
        @blur=${() => this.#onBlur()}
        @keydown=${(event: KeyboardEvent) => this.#onKey(event)}
        @pointerdown=${(event: PointerEvent) => this.#onPointer(event)}
        @pointermove=${(event: PointerEvent) => this.#onPointer(event)}
        @pointerleave=${(event: PointerEvent) => this.#onLeave(event)}
      ></div>
      ${readable && at ? this.#reading(readable, at) : nothing}`;
  }

  #reading({ lines, page, obstacles }: Readable, { line, stop }: ReadPosition): TemplateResult {
    const { places, read } = lines[line]!;
    const mark = places[stop]!;
    const { figures, remark } = read(stop);
    const rows = [
      ...figures.map((figure) => ['figure', figure] as const),
      ...brokenUp(remark ?? '').map((part) => ['remark', part] as const),
    ];
    const size = {
      width: Math.max(...rows.map(([, text]) => textSize(text, FONT_SIZE).width)),
      height: rows.length * ROW,
    };
    const box = this.#place(mark, size, page, obstacles);
    return html`<svg aria-hidden="true">
      <g transform=${`scale(${this.scale})`}>
      <circle class="mark" cx=${mark.x} cy=${mark.y} r="6" />
      ${
        box &&
        rows.map(
          ([kind, text], i) =>
            svg`<text class=${kind} x=${box.left} y=${box.top + i * ROW + FONT_SIZE}>${text}</text>`,
        )
      }
      </g>
    </svg>`;
  }

  /** Beside the mark if there is room, else anywhere; over another label rather than over a line. */
  #place(
    mark: Place,
    size: LabelSize,
    page: Box,
    { strokes, boxes }: Readable['obstacles'],
  ): Box | undefined {
    for (const obstacles of [
      { strokes, boxes },
      { strokes, boxes: [] },
    ]) {
      const beside = placeLabel(mark, size, page, obstacles, { last: this.#spot });
      this.#spot = beside?.spot;
      const box = beside?.box ?? placeAnywhere(mark, size, page, obstacles);
      if (box) return box;
    }
    return undefined;
  }

  #onFocus(): void {
    this.#isFocused = true;
    this.at ??= this.#left ?? this.readable?.().start ?? { line: 0, stop: 0 };
  }

  #onBlur(): void {
    this.#isFocused = false;
    this.#stop();
  }

  #onKey(event: KeyboardEvent): void {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.key === 'Escape' && this.at) {
      event.preventDefault();
      this.#stop();
      return;
    }
    const along = ALONG[event.key];
    const across = ACROSS[event.key];
    const lines = this.readable?.().lines;
    if (!lines || (along === undefined && across === undefined)) return;
    event.preventDefault();
    const from = this.at ?? this.#left ?? { line: 0, stop: 0 };
    this.at =
      across === undefined
        ? stepAlong(lines, from, (along ?? 0) * (event.shiftKey ? LONG_STEP : 1))
        : stepAcross(lines, from, across);
  }

  #onPointer(event: PointerEvent): void {
    const readable = this.readable?.();
    if (!readable) return;
    const at = nearestStop(readable.lines, {
      x: event.offsetX / this.scale,
      y: event.offsetY / this.scale,
    });
    if (at?.line !== this.at?.line || at?.stop !== this.at?.stop) this.at = at;
  }

  /** A finger that lifts leaves its reading standing; a pointer that goes away takes it along. */
  #onLeave(event: PointerEvent): void {
    if (event.pointerType !== 'touch' && !this.#isFocused) this.#stop();
  }

  #stop(): void {
    this.#left = this.at;
    this.at = undefined;
    this.#spot = undefined;
  }
}

/** Short rows find a place beside the mark where one long row would not. */
function brokenUp(remark: string): string[] {
  return (remark.match(/\S.{0,21}\S(?=\s|$)|\S+/g) ?? []).map((part) => part.trim());
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-plot-reader': PlotReader;
  }
}
