// The picture of a chart with the marks that were set on it. A press sets the next one, marks are
// dragged; by keys a cross is moved and set, or the mark that is held. A loupe shows what is under it.
// (Over 200 lines: pointer, keys and loupe share the place that is pointed at.)

import { html, LitElement, nothing, svg, type SVGTemplateResult, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Place } from '../../plot/frame.ts';
import { type Corner, loupeCorner } from '../../plot/chart-trace/loupe-corner.ts';
import { alongName, namePlace } from '../../plot/chart-trace/mark-name.ts';
import { isSameMark, type MarkName } from '../../plot/chart-trace/traced-chart.ts';
import { pictureWords } from '../../plot/chart-trace/trace-words.ts';
import { SizeController } from '../size-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { chartPictureStyles } from './chart-picture.styles.ts';
import { MarkDrag } from './mark-drag.ts';
import { drawnMark, loupe } from './mark-drawing.ts';
import { MarkEvent, SpotEvent } from './mark-events.ts';
import type { ChartImage } from './chart-image.ts';
import { keyStep, within } from './picture-steps.ts';
import { loupeSize, placeUnder, seenThrough, sizeOfWindow } from './picture-window.ts';
import type { ShownMark } from './shown-marks.ts';
import type { Zoom } from './zooms.ts';

/** Radius of what a pointer hits [px on the page]. */
const HANDLE = { fine: 12, coarse: 22 };

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
  @property({ attribute: false }) zoom: Zoom = 1;
  /** What the next press sets. */
  @property({ attribute: false }) next: MarkName | undefined;

  @state() private cross: Place | undefined;
  @state() private isFocused = false;
  @state() private pointed: Place | undefined;

  readonly #size = new SizeController(this);
  readonly #coarse = matchMedia('(pointer: coarse)');
  #down: Place | undefined;
  #drag: MarkDrag | undefined;

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
        aria-label=${pictureWords(this.#heldMark?.mark, this.next)}
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
      ${looked ? loupe(looked, image, this.#corner(looked, image)) : nothing}`;
  }

  get #heldMark(): ShownMark | undefined {
    return this.marks.find(({ mark }) => isSameMark(mark, this.held));
  }

  /** Pixels of the picture for one of the page [-]. */
  #scale(image: ChartImage): number {
    return this.#size.width > 0 ? image.width / (this.#size.width * this.zoom) : 1;
  }

  #cross({ width, height }: ChartImage): Place {
    return this.cross ?? { x: Math.round(width / 2), y: Math.round(height / 2) };
  }

  #mark(shown: ShownMark, image: ChartImage): SVGTemplateResult {
    const { mark, place } = shown;
    const scale = this.#scale(image);
    const radius = (this.#coarse.matches ? HANDLE.coarse : HANDLE.fine) * scale;
    return svg`${drawnMark(shown, image, scale, isSameMark(mark, this.held) ? 'held' : '')}
      <circle class="handle" cx=${place.x} cy=${place.y} r=${radius}
        @pointerdown=${(event: PointerEvent) => this.#onHandle(event, shown)}
        @pointermove=${(event: PointerEvent) => this.#onDrag(event)}
        @pointerup=${(event: PointerEvent) => this.#onDrop(event)}
        @pointercancel=${() => this.#endDrag()}
        @click=${(event: MouseEvent) => event.stopPropagation()} />`;
  }

  /** Where the loupe hides least of what is marked, as the picture is scrolled now. */
  #corner(looked: Place, image: ChartImage): Corner {
    const window = this.renderRoot.querySelector('.window');
    const picture = this.renderRoot.querySelector('.picture');
    if (!window || !picture) return { side: 'left', edge: 'top' };
    const seen = seenThrough(window, picture, image);
    const scale = this.#scale(image);
    const marks = this.marks.flatMap(({ mark, place, name }) => [
      seen(place),
      ...alongName(name, namePlace(mark, place, image, scale)).map(seen),
    ]);
    return loupeCorner(seen(looked), marks, sizeOfWindow(window), loupeSize());
  }

  #placeOf(event: MouseEvent, image: ChartImage): Place {
    return placeUnder(event, this.renderRoot.querySelector('.picture')!, image);
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

  #onHandle(event: PointerEvent, shown: ShownMark): void {
    if (!this.image || event.button !== 0 || this.#drag) return;
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    this.#drag = new MarkDrag(event.pointerId, shown, this.#placeOf(event, this.image));
  }

  #onDrag(event: PointerEvent): void {
    const { image } = this;
    const drag = this.#drag;
    if (!image || drag?.pointer !== event.pointerId) return;
    const { mark } = drag.shown;
    const to = drag.follow(this.#placeOf(event, image), this.#scale(image));
    if (!to) return;
    if (!isSameMark(mark, this.held)) this.#send(mark, { kind: 'hold' });
    this.pointed = within(to, image);
    this.#send(mark, { kind: 'move', place: this.pointed, ended: false });
  }

  #onDrop(event: PointerEvent): void {
    const drag = this.#drag;
    if (!this.image || drag?.pointer !== event.pointerId) return;
    this.#endDrag();
    if (drag.hasMoved) return;
    if (drag.meansMark(this.#scale(this.image))) this.#send(drag.shown.mark, { kind: 'hold' });
    else this.dispatchEvent(new SpotEvent(drag.down));
  }

  #endDrag(): void {
    const drag = this.#drag;
    this.#drag = undefined;
    this.pointed = undefined;
    const dragged = drag && this.marks.find(({ mark }) => isSameMark(mark, drag.shown.mark));
    if (!drag?.hasMoved || !dragged) return;
    this.#send(dragged.mark, { kind: 'move', place: dragged.place, ended: true });
  }

  #onKey(event: KeyboardEvent): void {
    const { image } = this;
    if (!image || event.altKey || event.ctrlKey || event.metaKey) return;
    const held = this.#heldMark;
    const way = keyStep(event);
    if (way) this.#stepBy(way, image, held);
    else if (event.key === 'Enter' || event.key === ' ') {
      if (held) this.#send(undefined, { kind: 'hold' });
      else this.dispatchEvent(new SpotEvent(this.#cross(image)));
    } else if (event.key === 'Escape' && held) this.#send(undefined, { kind: 'hold' });
    else if ((event.key === 'Delete' || event.key === 'Backspace') && held) {
      this.#send(held.mark, { kind: 'remove' });
    } else return;
    event.preventDefault();
  }

  #stepBy(way: Place, image: ChartImage, held: ShownMark | undefined): void {
    const from = held?.place ?? this.#cross(image);
    const place = within({ x: from.x + way.x, y: from.y + way.y }, image);
    if (held) this.#send(held.mark, { kind: 'move', place, ended: false });
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

declare global {
  interface HTMLElementTagNameMap {
    'dc-chart-picture': ChartPicture;
  }
}
