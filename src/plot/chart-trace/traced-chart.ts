// A chart while it is being traced from its picture: two marks on each axis with their values, and the
// points set on the curve. Plain data.

import type { UnitName } from '../../units/unit.ts';
import type { Place } from '../frame.ts';
import type { AxisName, AxisScale } from './chart-mapping.ts';

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
  /** What its numbers are in; undefined for the unit that the page shows. */
  readonly unit: UnitName | undefined;
  readonly marks: readonly [AxisMark, AxisMark];
}

/** Everything that was set on a picture. */
export interface TracedChart {
  readonly axes: Readonly<Record<AxisName, TracedAxis>>;
  /** Places on the curve, in the order in which they were set [px] */
  readonly points: readonly Place[];
}

/** The first or the second mark of an axis. */
export interface AxisMarkName {
  readonly kind: 'axis';
  readonly axis: AxisName;
  readonly index: 0 | 1;
}

/** What is set on the picture: one of the two marks of an axis, or a point of the curve. */
export type MarkName = AxisMarkName | { readonly kind: 'point'; readonly index: number };

const UNSET: AxisMark = { place: undefined, value: undefined };
const UNSET_AXIS: TracedAxis = { scale: 'linear', unit: undefined, marks: [UNSET, UNSET] };

/** Nothing is set yet. */
export const UNTRACED: TracedChart = {
  axes: { flow: UNSET_AXIS, pressure: UNSET_AXIS },
  points: [],
};

/** In the order in which they are asked for. */
export const AXIS_MARKS: readonly AxisMarkName[] = [
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
export function nextValue(chart: TracedChart): AxisMarkName | undefined {
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

/** Whether two names are of the same mark. */
export function isSameMark(a: MarkName, b: MarkName | undefined): boolean {
  if (a.kind !== b?.kind || a.index !== b.index) return false;
  return a.kind === 'point' || (b.kind === 'axis' && a.axis === b.axis);
}
