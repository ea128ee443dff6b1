// A curve from the picture of a chart: choose the picture, mark two known values on each axis, set
// points along the curve, take them. The picture stays in this browser and is kept nowhere.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Place } from '../../plot/frame.ts';
import type { AxisName } from '../../plot/chart-trace/chart-mapping.ts';
import {
  AXIS_MARKS,
  mappingOf,
  type MarkName,
  nextMark,
  placeOf,
  type TracedChart,
  tracedValues,
  UNTRACED,
  withoutPoint,
  withPlace,
  withScale,
  withValue,
} from '../../plot/chart-trace/traced-chart.ts';
import { LEAST_POINTS, nextStep } from '../../plot/chart-trace/trace-words.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { fieldStyles } from '../styles/field.styles.ts';
import type { AxisEvent } from './axis-event.ts';
import './axis-fields.ts';
import './chart-picture.ts';
import { type ShownMark, ZOOMS } from './chart-picture.ts';
import { chartTraceStyles } from './chart-trace.styles.ts';
import type { MarkEvent, SpotEvent } from './mark-events.ts';
import { markNudge } from './mark-nudge.ts';
import { ACCEPTED, type ChartImage, openPicture } from './open-picture.ts';
import { tracedList } from './traced-list.ts';
import { TracedEvent } from './traced-event.ts';

/**
 * @element dc-chart-trace
 * @fires dc-traced - the points are taken
 */
@customElement('dc-chart-trace')
export class ChartTrace extends LitElement {
  static override styles = [baseStyles, buttonStyles, fieldStyles, chartTraceStyles];

  @property({ attribute: false }) units: UnitSystem = 'us';

  @state() private image: ChartImage | undefined;
  @state() private problem = '';
  @state() private chart: TracedChart = UNTRACED;
  @state() private held: MarkName | undefined;
  @state() private taken = '';
  /** Which of the zooms it has. */
  @state() private zoom = 0;

  /** States before this one, the latest last. */
  #former: TracedChart[] = [];
  /** As it was when a drag began. */
  #dragged: TracedChart | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener('paste', this.#onPaste);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    document.removeEventListener('paste', this.#onPaste);
    this.#forget();
    this.image = undefined;
  }

  protected override render(): TemplateResult {
    return html`<div
      @dragover=${(event: DragEvent) => this.#onDragOver(event)}
      @drop=${(event: DragEvent) => this.#onDrop(event)}
    >
      <div class="choose">
        <label for="file">Picture of the chart</label>
        <input id="file" type="file" accept=${ACCEPTED} @change=${(event: Event) => this.#onFile(event)} />
      </div>
      <p class="hint">
        A PNG, JPEG or WebP: choose it, drop it here, or paste it. It stays on this device and is not
        kept.
      </p>
      ${this.problem === '' ? nothing : html`<p class="problem" role="alert">${this.problem}</p>`}
      ${this.image ? this.#work(this.image) : nothing}
      <p class="hint" role="status">${this.taken}</p>
    </div>`;
  }

  #work(image: ChartImage): TemplateResult {
    const { chart, held } = this;
    return html`<p class="step" role="status">${nextStep(chart)}</p>
      <div class="work">
        <div>
          <dc-chart-picture
            .image=${image}
            .marks=${shownMarks(chart)}
            .held=${held}
            .zoom=${ZOOMS[this.zoom] ?? 1}
            .next=${nextMark(chart)}
            @dc-spot=${({ place }: SpotEvent) => this.#onSpot(place)}
            @dc-mark=${(event: MarkEvent) => this.#onMark(event)}
          ></dc-chart-picture>
          ${markNudge(held, {
            move: (way) => this.#nudge(way),
            letGo: () => this.#hold(undefined),
            undo: this.#former.length > 0 ? () => this.#undo() : undefined,
            larger: this.zoom < ZOOMS.length - 1 ? () => this.zoom++ : undefined,
            smaller: this.zoom > 0 ? () => this.zoom-- : undefined,
          })}
        </div>
        <div>
          ${(['flow', 'pressure'] as const).map(
            (axis) => html`<dc-axis-fields
              .axis=${axis}
              .traced=${chart.axes[axis]}
              .units=${this.units}
              @dc-axis=${(event: AxisEvent) => this.#onAxis(axis, event)}
            ></dc-axis-fields>`,
          )}
          ${this.#points()}
        </div>
      </div>`;
  }

  #points(): TemplateResult {
    const { chart, units } = this;
    const mapping = mappingOf(chart);
    if (mapping?.kind !== 'ready') return html`${nothing}`;
    const isEnough = chart.points.length >= LEAST_POINTS;
    return html`<fieldset>
      <legend>Points on the curve</legend>
      ${tracedList(tracedValues(chart), units, {
        hold: (index) => this.#hold({ kind: 'point', index }),
        remove: (index) => this.#remove(index),
      })}
      <div class="take">
        <button type="button" ?disabled=${!isEnough} @click=${() => this.#take('replace')}>
          <span>Put them in the place of the curve’s points</span>
        </button>
        <button type="button" ?disabled=${!isEnough} @click=${() => this.#take('add')}>
          <span>Add them to the curve’s points</span>
        </button>
      </div>
    </fieldset>`;
  }

  #onFile(event: Event): void {
    const file = (event.currentTarget as HTMLInputElement).files?.[0];
    if (file) void this.#open(file);
  }

  #onDragOver(event: DragEvent): void {
    if (event.dataTransfer?.types.includes('Files')) event.preventDefault();
  }

  #onDrop(event: DragEvent): void {
    const file = event.dataTransfer?.files[0];
    if (!file) return;
    event.preventDefault();
    // Elsewhere on the page a file that is dropped is a shop.
    event.stopPropagation();
    void this.#open(file);
  }

  /** A picture that is pasted while this is unfolded is meant for it. */
  readonly #onPaste = (event: ClipboardEvent): void => {
    const file = [...(event.clipboardData?.files ?? [])].find(({ type }) =>
      type.startsWith('image/'),
    );
    if (!file || event.defaultPrevented || !this.checkVisibility()) return;
    event.preventDefault();
    void this.#open(file);
  };

  async #open(file: File): Promise<void> {
    const opened = await openPicture(file);
    if (opened.kind === 'refused') {
      this.problem = opened.words;
      return;
    }
    this.#forget();
    this.image = opened.image;
    this.problem = '';
    this.taken = '';
    this.chart = UNTRACED;
    this.held = undefined;
    this.zoom = 0;
    this.#former = [];
  }

  #forget(): void {
    if (this.image) URL.revokeObjectURL(this.image.url);
  }

  #onSpot(place: Place): void {
    const mark = nextMark(this.chart);
    this.#change(withPlace(this.chart, mark, place));
    this.held = mark;
  }

  #onMark({ mark, wish }: MarkEvent): void {
    switch (wish.kind) {
      case 'hold':
        this.#hold(mark);
        return;
      case 'move':
        if (mark) this.#move(mark, wish.place, wish.ended);
        return;
      case 'remove':
        if (mark?.kind === 'point') this.#remove(mark.index);
        return;
      default:
        wish satisfies never;
    }
  }

  /** A whole drag is one step to undo. */
  #move(mark: MarkName, place: Place, ended: boolean): void {
    this.#dragged ??= this.chart;
    this.chart = withPlace(this.chart, mark, place);
    if (!ended) return;
    if (placeOf(this.#dragged, mark) !== place) this.#former.push(this.#dragged);
    this.#dragged = undefined;
    this.requestUpdate();
  }

  #nudge({ x, y }: Place): void {
    const place = this.held && placeOf(this.chart, this.held);
    if (!this.held || !place) return;
    this.#change(withPlace(this.chart, this.held, { x: place.x + x, y: place.y + y }));
  }

  #onAxis(axis: AxisName, { change }: AxisEvent): void {
    this.#change(
      change.kind === 'scale'
        ? withScale(this.chart, axis, change.scale)
        : withValue(this.chart, { kind: 'axis', axis, index: change.index }, change.value),
    );
  }

  #remove(index: number): void {
    this.held = undefined;
    this.#change(withoutPoint(this.chart, index));
  }

  #hold(mark: MarkName | undefined): void {
    this.held = mark;
  }

  #change(chart: TracedChart): void {
    this.#former.push(this.chart);
    this.chart = chart;
    this.taken = '';
  }

  #undo(): void {
    const former = this.#former.pop();
    if (!former) return;
    this.chart = former;
    if (this.held && !placeOf(former, this.held)) this.held = undefined;
  }

  #take(how: 'replace' | 'add'): void {
    const points = tracedValues(this.chart).toSorted((a, b) => a.flow - b.flow);
    this.dispatchEvent(new TracedEvent(points, how));
    this.taken = `${points.length} points were taken. Undo brings the former ones back.`;
  }
}

function shownMarks(chart: TracedChart): ShownMark[] {
  const axes = AXIS_MARKS.flatMap((mark): ShownMark[] => {
    const place = placeOf(chart, mark);
    return place ? [{ mark, place, name: `${mark.axis} ${mark.index + 1}` }] : [];
  });
  const points = chart.points.map((place, index): ShownMark => {
    const mark = { kind: 'point', index } as const;
    return { mark, place, name: String(index + 1) };
  });
  return [...axes, ...points];
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-chart-trace': ChartTrace;
  }
}
