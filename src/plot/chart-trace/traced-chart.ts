// A chart while it is being traced from its picture: two marks on each axis with their values, and the
// points set on the curve. Plain data and steps from one state to the next, so that each can be undone.

import type { CurvePoint } from '../../curve/curve-data.ts';
import {
  type AxisName,
  type AxisScale,
  type ChartAxis,
  type ChartMapping,
  chartMapping,
} from './chart-mapping.ts';
import type { Place } from '../frame.ts';

/** A mark on an axis; where it is and what it stands for are found out one after the other. */
export interface AxisMark {
  /** On the picture [px] */
  readonly place: Place | undefined;
  /** [m³/s] or [Pa] */
  readonly value: number | undefined;
}

/** An axis with both its marks. */
export interface TracedAxis {
  readonly scale: AxisScale;
  readonly marks: readonly [AxisMark, AxisMark];
}

/** Everything that was set on a picture. */
export interface TracedChart {
  readonly axes: Readonly<Record<AxisName, TracedAxis>>;
  /** Places on the curve, in the order in which they were set [px] */
  readonly points: readonly Place[];
}

/** What is set on the picture: one of the two marks of an axis, or a point of the curve. */
export type MarkName =
  | { readonly kind: 'axis'; readonly axis: AxisName; readonly index: 0 | 1 }
  | { readonly kind: 'point'; readonly index: number };

/** A point set by hand at no flow may come out below it by this part of the marked flow [-]. */
const SLIP = 0.01;

const UNSET: AxisMark = { place: undefined, value: undefined };
const UNSET_AXIS: TracedAxis = { scale: 'linear', marks: [UNSET, UNSET] };

/** Nothing is set yet. */
export const UNTRACED: TracedChart = {
  axes: { flow: UNSET_AXIS, pressure: UNSET_AXIS },
  points: [],
};

/** In the order in which they are asked for. */
export const AXIS_MARKS: readonly Extract<MarkName, { kind: 'axis' }>[] = [
  { kind: 'axis', axis: 'flow', index: 0 },
  { kind: 'axis', axis: 'flow', index: 1 },
  { kind: 'axis', axis: 'pressure', index: 0 },
  { kind: 'axis', axis: 'pressure', index: 1 },
];

/**
 * What the next place on the picture is for.
 *
 * @param chart - the chart
 * @returns the first mark of an axis that has no place yet, else another point
 */
export function nextMark(chart: TracedChart): MarkName {
  const unset = AXIS_MARKS.find((mark) => placeOf(chart, mark) === undefined);
  return unset ?? { kind: 'point', index: chart.points.length };
}

/** The first mark of an axis that has a place and no value; undefined where there is none. */
export function nextValue(chart: TracedChart): (typeof AXIS_MARKS)[number] | undefined {
  return AXIS_MARKS.find(({ axis, index }) => {
    const { place, value } = chart.axes[axis].marks[index];
    return place !== undefined && value === undefined;
  });
}

/** Where a mark or a point is [px]; undefined where it is nowhere. */
export function placeOf(chart: TracedChart, mark: MarkName): Place | undefined {
  return mark.kind === 'point'
    ? chart.points[mark.index]
    : chart.axes[mark.axis].marks[mark.index].place;
}

/** The chart with a mark or a point at a place [px]; one point more where there was none. */
export function withPlace(chart: TracedChart, mark: MarkName, place: Place): TracedChart {
  if (mark.kind === 'axis') return withAxisMark(chart, mark, { place });
  return { ...chart, points: chart.points.toSpliced(mark.index, 1, place) };
}

/** The chart with the value of a mark; undefined where it is not known. */
export function withValue(
  chart: TracedChart,
  mark: (typeof AXIS_MARKS)[number],
  value: number | undefined,
): TracedChart {
  return withAxisMark(chart, mark, { value });
}

/** The chart without a point. */
export function withoutPoint(chart: TracedChart, index: number): TracedChart {
  return { ...chart, points: chart.points.toSpliced(index, 1) };
}

/** The chart with the values along an axis running in another way. */
export function withScale(chart: TracedChart, axis: AxisName, scale: AxisScale): TracedChart {
  return { ...chart, axes: { ...chart.axes, [axis]: { ...chart.axes[axis], scale } } };
}

/** How the chart is read; undefined until all four marks have a place and a value. */
export function mappingOf({ axes }: TracedChart): ChartMapping | undefined {
  const flow = wholeAxis(axes.flow);
  const pressure = wholeAxis(axes.pressure);
  return flow && pressure && chartMapping({ flow, pressure });
}

/** What each point stands for, in the order in which they were set; empty while nothing can be read. */
export function tracedValues(chart: TracedChart): readonly CurvePoint[] {
  const mapping = mappingOf(chart);
  if (mapping?.kind !== 'ready') return [];
  const flows = chart.axes.flow.marks.map(({ value }) => Math.abs(value ?? 0));
  const slip = SLIP * Math.max(...flows);
  return chart.points.map((place) => {
    const { flow, pressure } = mapping.read(place);
    return { flow: flow < 0 && flow > -slip ? 0 : flow, pressure };
  });
}

function withAxisMark(
  chart: TracedChart,
  { axis, index }: (typeof AXIS_MARKS)[number],
  change: Partial<AxisMark>,
): TracedChart {
  const { scale, marks } = chart.axes[axis];
  const [first, second] = marks;
  const changed: TracedAxis['marks'] =
    index === 0 ? [{ ...first, ...change }, second] : [first, { ...second, ...change }];
  return { ...chart, axes: { ...chart.axes, [axis]: { scale, marks: changed } } };
}

function wholeAxis({ scale, marks: [first, second] }: TracedAxis): ChartAxis | undefined {
  const [a, b] = [wholeMark(first), wholeMark(second)];
  return a && b && { scale, marks: [a, b] };
}

function wholeMark({ place, value }: AxisMark): ChartAxis['marks'][0] | undefined {
  return place === undefined || value === undefined ? undefined : { place, value };
}
