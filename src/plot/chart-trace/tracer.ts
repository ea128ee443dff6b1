// What a reader does with the picture of a chart, step by step, each of which can be taken back: the
// picture opened last, what was set on it, and the mark that keys move.

import type { AxisName, AxisScale } from './chart-mapping.ts';
import {
  type AxisMarkName,
  type MarkName,
  nextMark,
  placeOf,
  type TracedChart,
  UNTRACED,
} from './traced-chart.ts';
import { withoutPoint, withPlace, withScale, withUnit, withValue } from './traced-steps.ts';
import type { Place } from '../frame.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import type { UnitName } from '../../units/unit.ts';
import { History } from '../../state/history.ts';

/** A picture and what was set on it. */
interface Tracing<Picture> {
  readonly picture: Picture;
  readonly chart: TracedChart;
}

/** A tracing from its first picture on; what a picture is, it does not need to know. */
export class Tracer<Picture> {
  #held: MarkName | undefined;
  readonly #history: History<Tracing<Picture>>;

  constructor(picture: Picture) {
    this.#history = new History<Tracing<Picture>>({ picture, chart: UNTRACED });
  }

  get picture(): Picture {
    return this.#history.present.value.picture;
  }

  get chart(): TracedChart {
    return this.#history.present.value.chart;
  }

  /** The mark that keys move; undefined where they move a cross. */
  get held(): MarkName | undefined {
    return this.#held;
  }

  get canUndo(): boolean {
    return this.#history.canUndo.value;
  }

  /** Begins on another picture, and so that what was set on the one before comes back with undo. */
  open(picture: Picture): void {
    this.#held = undefined;
    this.#history.commit(() => ({ picture, chart: UNTRACED }));
  }

  /** Sets the next mark or point [px], and holds it. */
  set(place: Place): void {
    const mark = nextMark(this.chart);
    this.#change((chart) => withPlace(chart, mark, place));
    this.#held = mark;
  }

  /** Moves a mark to a place [px]; moves that follow one another are one step until `rest`. */
  move(mark: MarkName, place: Place): void {
    const was = placeOf(this.chart, mark);
    if (was?.x === place.x && was.y === place.y) return;
    this.#change((chart) => withPlace(chart, mark, place), `move ${JSON.stringify(mark)}`);
  }

  /** Ends a run of moves. */
  rest(): void {
    this.#history.seal();
  }

  /** Holds a mark, or lets go of the one that is held. */
  hold(mark: MarkName | undefined): void {
    this.rest();
    this.#held = mark;
  }

  removePoint(index: number): void {
    this.#held = undefined;
    this.#change((chart) => withoutPoint(chart, index));
  }

  /** Says what a mark stands for: flow [m³/s] or pressure [Pa]. */
  setValue(mark: AxisMarkName, value: number | undefined): void {
    this.#change((chart) => withValue(chart, mark, value));
  }

  /** Says what the numbers of an axis are in; until then they are in the page's units. */
  setUnit(axis: AxisName, unit: UnitName, units: UnitSystem): void {
    this.#change((chart) => withUnit(chart, axis, unit, units));
  }

  setScale(axis: AxisName, scale: AxisScale): void {
    this.#change((chart) => withScale(chart, axis, scale));
  }

  undo(): void {
    this.#history.undo();
    if (this.#held && !placeOf(this.chart, this.#held)) this.#held = undefined;
  }

  #change(step: (chart: TracedChart) => TracedChart, mergeKey?: string): void {
    this.#history.commit(({ picture, chart }) => ({ picture, chart: step(chart) }), mergeKey);
  }
}
