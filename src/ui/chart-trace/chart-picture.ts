// The picture of a chart with the marks that were set on it. A press sets the next one, marks are
// dragged; by keys a cross is moved and set, or the mark that is held. A loupe shows what is under it.

import { html, LitElement, nothing, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Place } from '../../plot/frame.ts';
import type { MarkName } from '../../plot/chart-trace/traced-chart.ts';
import { markWords } from '../../plot/chart-trace/trace-words.ts';
import { SizeController } from '../size-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { chartPictureStyles } from './chart-picture.styles.ts';
import { MarkEvent, SpotEvent } from './mark-events.ts';
import type { ChartImage } from './open-picture.ts';

/** A mark on the picture. */
export interface ShownMark {
  readonly mark: MarkName;
  readonly place: Place;
  /** Written beside it. */
  readonly name: string;
}

/** How many times the width of the page's column the picture can be. */
export const ZOOMS = [1, 2, 4] as const;

/** Radius of what a pointer hits, and half of what the eye sees [px on the page]. */
const HANDLE = { fine: 12, coarse: 22 };
const ARM = 9;
const NAME_SIZE = 13;
/** From this part of the width on, names stand left of their marks [-]. */
const NAMES_LEFT_FROM = 0.8;
/** How far a key moves: a pixel of the picture, or with Shift [px]. */
const LONG_STEP = 10;
/** What the loupe shows to each side [px of the picture]. */
const LOUPE_REACH = 12;

const WAYS: Readonly<Record<string, Place>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/**
 * @element dc-chart-picture
 * @fires dc-spot - a place for the next mark
 * @fires dc-mark - a mark is held, moved or taken away
 */
@customElement('dc-chart-picture')
export class ChartPicture extends LitElement {
  static override styles = [baseStyles, chartPictureStyles];

  @property({ attribute: false }) image: ChartImage | undefined;
  @property({ attribute: false }) marks: readonly ShownMark[] = [];
  /** The mark that keys move. */
  @property({ attribute: false }) held: MarkName | undefined;
  /** How many times its usual size it is shown. */
  @property({ attribute: false }) zoom: (typeof ZOOMS)[number] = 1;
  /** What the next press sets. */
  @property({ attribute: false }) next: MarkName | undefined;

  @state() private cross: Place | undefined;
  @state() private isFocused = false;
  @state() private pointed: Place | undefined;

  readonly #size = new SizeController(this);
  readonly #coarse = matchMedia('(pointer: coarse)');
  #down: Place | undefined;
  #drag: { readonly pointer: number; readonly mark: MarkName } | undefined;

  protected override render(): TemplateResult {
    const { image } = this;
    if (!image) return html`${nothing}`;
    const { width, height, url } = image;
    const cross = this.isFocused && !this.#heldMark ? this.#cross(image) : undefined;
    const looked = this.pointed ?? this.#heldMark?.place ?? cross;
    return html`<div class="window"><div
        class="surface zoom-${this.zoom}"
        role="application"
        tabindex="0"
        aria-roledescription="picture to mark"
        aria-label=${this.#words()}
        @keydown=${(event: KeyboardEvent) => this.#onKey(event)}
        @focus=${() => this.#onFocus()}
        @blur=${() => this.#onBlur()}
        @pointerdown=${(event: PointerEvent) => this.#onDown(event)}
        @click=${(event: MouseEvent) => this.#onClick(event)}
        @pointermove=${(event: PointerEvent) => this.#onMove(event)}
        @pointerleave=${() => this.#onLeave()}
      >
        <svg class="picture" viewBox="0 0 ${width} ${height}" width=${width} height=${height} aria-hidden="true">
          <image href=${url} width=${width} height=${height} />
          ${cross ? svg`<path class="cross" d="M0,${cross.y}H${width}M${cross.x},0V${height}" />` : nothing}
          ${this.marks.map((mark) => this.#mark(mark, image))}
        </svg>
      </div></div>
      ${looked ? this.#loupe(looked, image) : nothing}`;
  }

  get #heldMark(): ShownMark | undefined {
    return this.marks.find(({ mark }) => isSame(mark, this.held));
  }

  #words(): string {
    const held = this.#heldMark;
    return held
      ? `Picture of the chart. Arrow keys move the ${markWords(held.mark)}, by ten pixels with Shift; Enter lets go of it, Delete takes it away.`
      : `Picture of the chart. Arrow keys move a cross, by ten pixels with Shift; Enter sets the ${this.next ? markWords(this.next) : 'next mark'}.`;
  }

  /** Pixels of the picture for one of the page [-]. */
  #scale(image: ChartImage): number {
    return this.#size.width > 0 ? image.width / (this.#size.width * this.zoom) : 1;
  }

  #cross({ width, height }: ChartImage): Place {
    return this.cross ?? { x: Math.round(width / 2), y: Math.round(height / 2) };
  }

  #mark({ mark, place, name }: ShownMark, image: ChartImage): SVGTemplateResult {
    const scale = this.#scale(image);
    const arm = ARM * scale;
    const { x, y } = place;
    const d =
      mark.kind === 'point'
        ? `M${x - arm},${y}a${arm},${arm} 0 1 0 ${2 * arm},0a${arm},${arm} 0 1 0 ${-2 * arm},0`
        : `M${x - arm},${y - arm}L${x + arm},${y + arm}M${x - arm},${y + arm}L${x + arm},${y - arm}`;
    const isHeld = isSame(mark, this.held);
    const size = NAME_SIZE * scale;
    const isFarRight = x > NAMES_LEFT_FROM * image.width;
    const beside = (arm + size / 3) * (isFarRight ? -1 : 1);
    return svg`<path class="under" d=${d} />
      <path class="mark ${mark.kind} ${isHeld ? 'held' : ''}" d=${d} />
      <text class="name" x=${x + beside} y=${y - arm / 2} text-anchor=${isFarRight ? 'end' : 'start'} font-size=${size} stroke-width=${size / 4}>${name}</text>
      <circle class="handle" cx=${x} cy=${y} r=${(this.#coarse.matches ? HANDLE.coarse : HANDLE.fine) * scale}
        @pointerdown=${(event: PointerEvent) => this.#onHandle(event, mark)}
        @pointermove=${(event: PointerEvent) => this.#onDrag(event)}
        @pointerup=${(event: PointerEvent) => this.#onDrop(event)}
        @pointercancel=${() => this.#endDrag()}
        @click=${(event: MouseEvent) => event.stopPropagation()} />`;
  }

  #loupe({ x, y }: Place, image: ChartImage): TemplateResult {
    const side = x > image.width / 2 ? 'left' : 'right';
    const reach = LOUPE_REACH;
    return html`<svg
      class="loupe ${side}"
      viewBox="${x - reach} ${y - reach} ${2 * reach} ${2 * reach}"
      aria-hidden="true"
    >
      <image href=${image.url} width=${image.width} height=${image.height} />
      <path d="M${x - reach},${y}H${x - 1}M${x + 1},${y}H${x + reach}M${x},${y - reach}V${y - 1}M${x},${y + 1}V${y + reach}" />
    </svg>`;
  }

  #placeOf(event: MouseEvent, image: ChartImage): Place {
    const { left, top, width, height } = this.renderRoot
      .querySelector('.picture')!
      .getBoundingClientRect();
    const x = ((event.clientX - left) / width) * image.width;
    const y = ((event.clientY - top) / height) * image.height;
    return within({ x: Math.round(x * 10) / 10, y: Math.round(y * 10) / 10 }, image);
  }

  /** A click comes in whole pixels of the page; where the pointer went down is known more closely. */
  #onDown(event: PointerEvent): void {
    this.#down = this.image && this.#placeOf(event, this.image);
  }

  #onClick({ detail }: MouseEvent): void {
    // A press of a key on the focused surface arrives as a click without a place.
    const place = detail === 0 ? undefined : this.#down;
    if (!place) return;
    this.cross = place;
    this.dispatchEvent(new SpotEvent(place));
  }

  #onMove(event: PointerEvent): void {
    if (this.image && event.pointerType !== 'touch') {
      this.pointed = this.#placeOf(event, this.image);
    }
  }

  #onLeave(): void {
    this.pointed = undefined;
  }

  #onHandle(event: PointerEvent, mark: MarkName): void {
    if (event.button !== 0 || this.#drag) return;
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    this.#drag = { pointer: event.pointerId, mark };
    this.#send(mark, { kind: 'hold' });
  }

  #onDrag(event: PointerEvent): void {
    const { image } = this;
    if (!image || this.#drag?.pointer !== event.pointerId) return;
    const place = this.#placeOf(event, image);
    this.pointed = place;
    this.#send(this.#drag.mark, { kind: 'move', place, ended: false });
  }

  #onDrop(event: PointerEvent): void {
    if (this.#drag?.pointer === event.pointerId) this.#endDrag();
  }

  #endDrag(): void {
    const drag = this.#drag;
    this.#drag = undefined;
    this.pointed = undefined;
    const dragged = drag && this.marks.find(({ mark }) => isSame(mark, drag.mark));
    if (dragged) this.#send(dragged.mark, { kind: 'move', place: dragged.place, ended: true });
  }

  #onKey(event: KeyboardEvent): void {
    const { image } = this;
    if (!image || event.altKey || event.ctrlKey || event.metaKey) return;
    const held = this.#heldMark;
    const way = WAYS[event.key];
    if (way) this.#step(way, event.shiftKey ? LONG_STEP : 1, image, held);
    else if (event.key === 'Enter' || event.key === ' ') {
      if (held) this.#send(undefined, { kind: 'hold' });
      else this.dispatchEvent(new SpotEvent(this.#cross(image)));
    } else if (event.key === 'Escape' && held) this.#send(undefined, { kind: 'hold' });
    else if ((event.key === 'Delete' || event.key === 'Backspace') && held) {
      this.#send(held.mark, { kind: 'remove' });
    } else return;
    event.preventDefault();
  }

  #step(way: Place, step: number, image: ChartImage, held: ShownMark | undefined): void {
    const from = held?.place ?? this.#cross(image);
    const place = within({ x: from.x + step * way.x, y: from.y + step * way.y }, image);
    if (held) this.#send(held.mark, { kind: 'move', place, ended: true });
    else this.cross = place;
  }

  #onFocus(): void {
    this.isFocused = true;
  }

  #onBlur(): void {
    this.isFocused = false;
  }

  #send(mark: MarkName | undefined, wish: MarkEvent['wish']): void {
    this.dispatchEvent(new MarkEvent(mark, wish));
  }
}

function isSame(a: MarkName, b: MarkName | undefined): boolean {
  if (a.kind !== b?.kind || a.index !== b.index) return false;
  return a.kind === 'point' || (b.kind === 'axis' && a.axis === b.axis);
}

function within({ x, y }: Place, { width, height }: ChartImage): Place {
  return { x: Math.min(width, Math.max(0, x)), y: Math.min(height, Math.max(0, y)) };
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-chart-picture': ChartPicture;
  }
}
