// The plot in which a collector's curve is entered. Its marks are the points of the table beside it and
// can be moved by pointer, finger and keys; the line follows in the same frame. Axes stay put while a
// point is moved. (Over 200 lines: the ways to move a mark belong to one element.)

import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { guard } from 'lit/directives/guard.js';
import {
  curvePlot,
  type CurvePlotParts,
  type CurveRule,
  curveRule,
  type EnteredCurve,
  movedPoint,
} from '../../plot/curve-plot.ts';
import { curveReading } from '../../plot/curve-reading.ts';
import type { CurvePoint } from '../../curve/curve-data.ts';
import { formatQuantity } from '../../units/format.ts';
import { toDisplay, type UnitSystem } from '../../units/quantity.ts';
import { lastDigit } from '../../units/rounding.ts';
import { HandMoves } from '../hand-moves.ts';
import { movedBy } from '../moved-by.ts';
import '../plot-figure/plot-reader.ts';
import { SizeController } from '../size-controller.ts';
import { baseStyles } from '../styles/base.styles.ts';
import { ruledPlotStyles } from '../styles/ruled-plot.styles.ts';
import { AFTER_THE_HAND, Turns } from '../turns.ts';
import { axesAt, frameBox, gapAt, gapSize, labelsAt, linesAt, markAt } from './curve-drawing.ts';
import { curvePlotStyles } from './curve-plot.styles.ts';
import { PointMoveEvent } from './point-move-event.ts';
import { COARSE, KEY_STEPS, pointSteps } from './point-steps.ts';

/** Without it there is no room for axes [px]. */
const LEAST_SIZE = 120;
/** A hand that moves less has only touched [px]. */
const TOUCH_ROOM = 3;

/** A point in the hand, or under a run of keys. */
interface Hold {
  readonly index: number;
  readonly run: number;
  /** As it was. */
  readonly start: CurvePoint;
  /** Of the hand; undefined under keys. */
  readonly pointer: number | undefined;
  /** Where the mark was in the plot, and the hand on the page [px]. */
  readonly mark: { readonly x: number; readonly y: number };
  readonly grip: { readonly x: number; readonly y: number };
  readonly moved: boolean;
}

/**
 * Arrows move the focused point by a fine step, with Shift by ten; Page keys by ten up and down.
 * Escape puts it back to where the hand or the run of keys took it up.
 *
 * @element dc-curve-plot
 * @fires dc-point-move - a point was moved
 */
@customElement('dc-curve-plot')
export class CurvePlot extends LitElement {
  static override styles = [baseStyles, ruledPlotStyles, curvePlotStyles];

  @property({ attribute: false }) curve: EnteredCurve | undefined;
  @property({ attribute: false }) units: UnitSystem = 'us';
  /** What the pressures are. */
  @property() pressure = 'pressure';

  @state() private hold: Hold | undefined;

  readonly #size = new SizeController(this);
  /** While a point is dragged; what is known of the curve is always the latest, and keys are answered at once. */
  readonly #turns = new Turns(AFTER_THE_HAND, () => this.requestUpdate());
  readonly #hand = new HandMoves<PointMoveEvent>((move) => this.dispatchEvent(move));
  #rule: CurveRule | undefined;
  #parts: CurvePlotParts | undefined;
  #ruledFor: readonly unknown[] = [];
  #runs = 0;

  /** The picture, to be saved. */
  get picture(): SVGSVGElement | null {
    return this.renderRoot.querySelector<SVGSVGElement>('svg.plot');
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#turns.forget();
    this.#hand.drop();
  }

  protected override shouldUpdate(changed: PropertyValues<this>): boolean {
    const isDragged = this.hold?.pointer !== undefined && this.hold.moved;
    if (!isDragged || !changed.has('curve')) return true;
    return this.#turns.isTurn() || changed.size > 1;
  }

  protected override willUpdate(): void {
    const { curve, units } = this;
    const { width, height } = this.#size;
    const hasRoom = width >= LEAST_SIZE && height >= LEAST_SIZE;
    this.#parts =
      curve && hasRoom
        ? curvePlot(curve, this.#ruleFor(curve), {
            size: (difference) => gapSize(difference, units),
            last: this.#parts?.gap?.spot,
          })
        : undefined;
  }

  protected override render(): TemplateResult {
    const { curve } = this;
    const { width, height, scale } = this.#size;
    const rule = this.#rule;
    const parts = this.#parts;
    if (!curve || !rule || !parts) return html`${nothing}`;
    return html`<svg
        class="plot"
        role="img"
        aria-label=${this.#words(curve)}
        width=${scale * width}
        height=${scale * height}
        viewBox="0 0 ${width} ${height}"
      >
        <clipPath id="frame">${frameBox(rule)}</clipPath>
        ${guard([rule, this.pressure], () => axesAt(rule, this.pressure))}
        <g clip-path="url(#frame)">${linesAt(parts)}</g>
        ${labelsAt(parts)} ${gapAt(parts, this.units)}
        ${parts.marks.map((mark, i) => markAt(mark, this.hold?.index === i))}
      </svg>
      <dc-plot-reader
        label="the collector’s curve"
        .scale=${scale}
        .readable=${() => curveReading(curve, rule, this.units)}
      ></dc-plot-reader>
      ${parts.marks.map((mark, i) => {
        const point = curve.points[i]!;
        return guard([point, rule, scale], () => this.#handle(point, mark, i, rule));
      })}`;
  }

  #words({ points, available }: EnteredCurve): string {
    const used = points.filter(({ aside }) => !aside).length;
    const aside = points.length - used;
    return `The collector’s curve through ${used} points${aside > 0 ? `, ${aside} set aside` : ''}${
      available ? ', as entered and as the ducts get it' : ''
    }`;
  }

  /** Axes are ruled anew for another size or unit, and for other points once none is held. */
  #ruleFor(curve: EnteredCurve): CurveRule {
    const { width, height } = this.#size;
    const wanted = [width, height, this.units, this.hold ? this.#ruledFor[3] : curve];
    if (this.#rule && wanted.every((value, i) => value === this.#ruledFor[i])) return this.#rule;
    this.#ruledFor = wanted;
    this.#rule = curveRule(curve, this.units, { width, height });
    return this.#rule;
  }

  #handle(
    point: CurvePoint,
    { x, y }: { readonly x: number; readonly y: number },
    index: number,
    { frame }: CurveRule,
  ): TemplateResult {
    const shownAt = (place: number) => Math.round(10 * this.#size.scale * place) / 10;
    const shown = (pressure: number) =>
      Math.round(1000 * toDisplay('pressure', this.units, pressure)) / 1000;
    return html`<div
      class="handle"
      role="slider"
      tabindex="0"
      aria-label="Point ${index + 1} of the curve"
      aria-valuemin="0"
      aria-valuemax=${shown(frame.pressureEnd)}
      aria-valuenow=${shown(point.pressure)}
      aria-valuetext=${spoken(point, this.units)}
      ${movedBy(`translate(${shownAt(x)}px,${shownAt(y)}px)`)}
      @keydown=${(event: KeyboardEvent) => this.#onKey(event, index)}
      @blur=${() => this.#onBlur(index)}
      @pointerdown=${(event: PointerEvent) => this.#onDown(event)}
      @pointermove=${(event: PointerEvent) => this.#onMove(event)}
      @pointerup=${(event: PointerEvent) => this.#onUp(event)}
      @pointercancel=${(event: PointerEvent) => this.#onLost(event)}
      @lostpointercapture=${(event: PointerEvent) => this.#onLost(event)}
    ></div>`;
  }

  /** Marks may lie within one another's reach; the nearest to the hand is taken. */
  #onDown(event: PointerEvent): void {
    const { curve } = this;
    const rule = this.#rule;
    if (event.button !== 0 || !curve || !rule || this.hold?.pointer !== undefined) return;
    const at = this.#placeOf(event);
    const marks = curve.points.map(({ flow, pressure }) => ({
      x: rule.frame.x(flow),
      y: rule.frame.y(pressure),
    }));
    const away = marks.map((mark) => Math.hypot(mark.x - at.x, mark.y - at.y));
    const index = away.indexOf(Math.min(...away));
    (event.currentTarget as HTMLElement).setPointerCapture(event.pointerId);
    this.hold = {
      index,
      run: ++this.#runs,
      start: curve.points[index]!,
      pointer: event.pointerId,
      mark: marks[index]!,
      grip: { x: event.pageX, y: event.pageY },
      moved: false,
    };
  }

  #onMove(event: PointerEvent): void {
    const { hold } = this;
    const frame = this.#rule?.frame;
    if (!hold || !frame || hold.pointer !== event.pointerId) return;
    // Reckoned from where it began: to ask in every frame where the plot lies costs more.
    const { scale } = this.#size;
    const way = {
      x: (event.pageX - hold.grip.x) / scale,
      y: (event.pageY - hold.grip.y) / scale,
    };
    if (!hold.moved && Math.hypot(way.x, way.y) < TOUCH_ROOM) return;
    if (!hold.moved) this.hold = { ...hold, moved: true };
    const { inner, flowEnd, pressureEnd } = frame;
    const across = (hold.mark.x + way.x - inner.left) / (inner.right - inner.left);
    const up = (inner.bottom - hold.mark.y - way.y) / (inner.bottom - inner.top);
    const move = this.#moveTo(hold, { flow: across * flowEnd, pressure: up * pressureEnd });
    if (move) this.#hand.take(move);
  }

  #onUp(event: PointerEvent): void {
    if (this.hold?.pointer !== event.pointerId) return;
    this.#hand.letGo();
    this.hold = undefined;
  }

  /** The page has taken the finger away, to scroll with it or otherwise. */
  #onLost(event: PointerEvent): void {
    if (this.hold?.pointer === event.pointerId) this.#putBack();
  }

  #onBlur(index: number): void {
    if (this.hold?.index === index && this.hold.pointer === undefined) this.hold = undefined;
  }

  #onKey(event: KeyboardEvent, index: number): void {
    const { curve } = this;
    const frame = this.#rule?.frame;
    const point = curve?.points[index];
    if (event.key === 'Escape' && this.hold) {
      event.preventDefault();
      event.stopPropagation();
      this.#putBack();
      return;
    }
    const direction = KEY_STEPS[event.key];
    if (!direction || !point || !frame || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    // A move of the hand that was put off is not to come after the keys.
    this.#hand.letGo();
    if (this.hold?.index !== index) {
      const nowhere = { x: 0, y: 0 };
      this.hold = {
        index,
        run: ++this.#runs,
        start: point,
        pointer: undefined,
        mark: nowhere,
        grip: nowhere,
        moved: true,
      };
    }
    const steps = pointSteps(this.units, { flow: frame.flowEnd, pressure: frame.pressureEnd });
    const times = event.shiftKey && Math.abs(direction[0] + direction[1]) === 1 ? COARSE : 1;
    const move = this.#moveTo(this.hold, {
      flow: point.flow + times * direction[0] * steps.flow,
      pressure: point.pressure + times * direction[1] * steps.pressure,
    });
    if (move) this.dispatchEvent(move);
  }

  #putBack(): void {
    const { hold } = this;
    this.#hand.drop();
    this.hold = undefined;
    if (hold?.moved) this.dispatchEvent(new PointMoveEvent(hold.index, hold.start, hold.run));
  }

  /** A move of the point to there or near it, if that is not where it was moved last. */
  #moveTo(
    hold: Hold,
    wanted: { readonly flow: number; readonly pressure: number },
  ): PointMoveEvent | undefined {
    const { curve, units } = this;
    const frame = this.#rule?.frame;
    if (!curve || !frame) return undefined;
    const point = movedPoint(
      curve.points,
      hold.index,
      wanted,
      { flow: frame.flowEnd, pressure: frame.pressureEnd },
      { flow: lastDigit('flow', units), pressure: lastDigit('pressure', units) },
    );
    const last = this.#hand.kept?.point ?? curve.points[hold.index]!;
    if (point.flow === last.flow && point.pressure === last.pressure) return undefined;
    return new PointMoveEvent(hold.index, point, hold.run);
  }

  #placeOf(event: PointerEvent): { readonly x: number; readonly y: number } {
    const box = this.getBoundingClientRect();
    const { scale } = this.#size;
    return { x: (event.clientX - box.left) / scale, y: (event.clientY - box.top) / scale };
  }
}

function spoken({ flow, pressure, aside }: CurvePoint, units: UnitSystem): string {
  const text = [formatQuantity('flow', units, flow), formatQuantity('pressure', units, pressure)];
  return `${text.map((each) => each.text).join(', ')}${aside ? ', set aside' : ''}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'dc-curve-plot': CurvePlot;
  }
}
