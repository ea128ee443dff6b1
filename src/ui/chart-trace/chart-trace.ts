// A curve from the picture of a chart: choose the picture, mark two known values on each axis, set
// points along the curve, take them. The picture stays in this browser and is kept nowhere.

import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { AxisName } from '../../plot/chart-trace/chart-mapping.ts';
import { nextStep } from '../../plot/chart-trace/trace-words.ts';
import { nextMark, placeOf, type TracedChart } from '../../plot/chart-trace/traced-chart.ts';
import { tracedValues } from '../../plot/chart-trace/traced-values.ts';
import { Tracer } from '../../plot/chart-trace/tracer.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { buttonStyles } from '../styles/button.styles.ts';
import { fieldStyles } from '../styles/field.styles.ts';
import type { AxisEvent } from './axis-event.ts';
import './axis-fields.ts';
import './chart-picture.ts';
import { chartTraceStyles } from './chart-trace.styles.ts';
import type { MarkEvent, SpotEvent } from './mark-events.ts';
import { markNudge } from './mark-nudge.ts';
import type { ChartImage } from './chart-image.ts';
import './picture-choice.ts';
import type { PictureEvent } from './picture-event.ts';
import { shownMarks } from './shown-marks.ts';
import { TracedEvent } from './traced-event.ts';
import { tracedPoints } from './traced-points.ts';
import { ZOOMS } from './zooms.ts';

/**
 * @element dc-chart-trace
 * @fires dc-traced - the points are taken
 */
@customElement('dc-chart-trace')
export class ChartTrace extends LitElement {
  static override styles = [baseStyles, buttonStyles, fieldStyles, chartTraceStyles];

  @property({ attribute: false }) units: UnitSystem = 'us';

  /** From the first picture on. */
  @state() private tracer: Tracer<ChartImage> | undefined;
  @state() private taken = '';
  /** Which of the zooms it has. */
  @state() private zoom = 0;

  /** Addresses of the pictures, to be given back. */
  #opened: readonly string[] = [];

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    for (const url of this.#opened) URL.revokeObjectURL(url);
    this.#opened = [];
    this.tracer = undefined;
  }

  protected override render(): TemplateResult {
    return html`<div
      @dragover=${(event: DragEvent) => this.#onDragOver(event)}
      @drop=${(event: DragEvent) => this.#onDrop(event)}
    >
      <dc-picture-choice
        .shown=${this.tracer?.picture}
        @dc-picture=${(event: PictureEvent) => this.#onPicture(event)}
      ></dc-picture-choice>
      ${this.tracer ? this.#work(this.tracer) : nothing}
      <p class="hint" role="status">${this.taken}</p>
    </div>`;
  }

  #work(tracer: Tracer<ChartImage>): TemplateResult {
    const { units } = this;
    const { picture, chart, held } = tracer;
    const step = (act: () => void) => this.#step(act);
    return html`<p class="step" role="status">${nextStep(chart, units)}</p>
      <div class="work">
        <div>
          <dc-chart-picture
            .image=${picture}
            .marks=${shownMarks(chart)}
            .held=${held}
            .zoom=${ZOOMS[this.zoom] ?? 1}
            .next=${nextMark(chart)}
            @dc-spot=${({ place }: SpotEvent) => step(() => tracer.set(place))}
            @dc-mark=${(event: MarkEvent) => this.#onMark(event, tracer)}
          ></dc-chart-picture>
          ${markNudge(held, {
            move: ({ x, y }) => {
              const place = held && placeOf(chart, held);
              if (place) step(() => tracer.move(held, { x: place.x + x, y: place.y + y }));
            },
            letGo: () => step(() => tracer.hold(undefined)),
            undo: tracer.canUndo ? () => step(() => tracer.undo()) : undefined,
            larger: this.zoom < ZOOMS.length - 1 ? () => this.zoom++ : undefined,
            smaller: this.zoom > 0 ? () => this.zoom-- : undefined,
          })}
        </div>
        <div>
          ${(['flow', 'pressure'] as const).map(
            (axis) => html`<dc-axis-fields
              .axis=${axis}
              .traced=${chart.axes[axis]}
              .units=${units}
              @dc-axis=${(event: AxisEvent) => this.#onAxis(axis, event, tracer)}
            ></dc-axis-fields>`,
          )}
          ${tracedPoints(chart, units, {
            hold: (index) => step(() => tracer.hold({ kind: 'point', index })),
            remove: (index) => step(() => tracer.removePoint(index)),
            take: (how) => this.#take(how, tracer.chart),
          })}
        </div>
      </div>`;
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
    this.renderRoot.querySelector('dc-picture-choice')?.take(file);
  }

  #onPicture(event: PictureEvent): void {
    event.stopPropagation();
    const { image } = event;
    this.#opened = [...this.#opened, image.url];
    this.zoom = 0;
    const { tracer } = this;
    this.#step(() => {
      if (tracer) tracer.open(image);
      else this.tracer = new Tracer(image);
    });
  }

  #onMark({ mark, wish }: MarkEvent, tracer: Tracer<ChartImage>): void {
    this.#step(() => {
      switch (wish.kind) {
        case 'hold':
          tracer.hold(mark);
          return;
        case 'move':
          if (mark) tracer.move(mark, wish.place);
          if (wish.ended) tracer.rest();
          return;
        case 'remove':
          if (mark?.kind === 'point') tracer.removePoint(mark.index);
          return;
        default:
          wish satisfies never;
      }
    });
  }

  #onAxis(axis: AxisName, { change }: AxisEvent, tracer: Tracer<ChartImage>): void {
    this.#step(() => {
      switch (change.kind) {
        case 'scale':
          tracer.setScale(axis, change.scale);
          return;
        case 'unit':
          tracer.setUnit(axis, change.unit, this.units);
          return;
        case 'value':
          tracer.setValue({ kind: 'axis', axis, index: change.index }, change.value);
          return;
        default:
          change satisfies never;
      }
    });
  }

  #step(act: () => void): void {
    act();
    this.taken = '';
    this.requestUpdate();
  }

  #take(how: 'replace' | 'add', chart: TracedChart): void {
    const points = tracedValues(chart).toSorted((a, b) => a.flow - b.flow);
    this.dispatchEvent(new TracedEvent(points, how));
    this.taken = `${points.length} points were taken. Undo brings the former ones back.`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-chart-trace': ChartTrace;
  }
}
