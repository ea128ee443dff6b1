// Steps in tracing a chart: each gives another chart and leaves the one before as it was, so that it
// can be taken back.

import { shownUnit, type UnitSystem } from '../../units/quantity.ts';
import { fromSi, toSi, type UnitName, UNITS } from '../../units/unit.ts';
import type { Place } from '../frame.ts';
import type { AxisName, AxisScale } from './chart-mapping.ts';
import type { AxisMark, AxisMarkName, MarkName, TracedAxis, TracedChart } from './traced-chart.ts';

/** The chart with a mark or a point at a place [px]; one point more where there was none. */
export function withPlace(chart: TracedChart, mark: MarkName, place: Place): TracedChart {
  if (mark.kind === 'axis') return withAxisMark(chart, mark, { place });
  return { ...chart, points: chart.points.toSpliced(mark.index, 1, place) };
}

/** The chart with the value of a mark; undefined where it is not known. */
export function withValue(
  chart: TracedChart,
  mark: AxisMarkName,
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

/**
 * The chart with the numbers of an axis in another unit. They stay as they were read off the chart, so
 * what they stand for changes.
 *
 * @param chart - the chart
 * @param axis - which axis
 * @param unit - what its numbers are in
 * @param units - the units of the page, which they were in if no other was said
 * @returns the chart
 */
export function withUnit(
  chart: TracedChart,
  axis: AxisName,
  unit: UnitName,
  units: UnitSystem,
): TracedChart {
  const was = chart.axes[axis];
  const before = was.unit ? UNITS[was.unit] : shownUnit(axis, units);
  const taken = (mark: AxisMark): AxisMark => ({
    ...mark,
    value:
      mark.value === undefined
        ? undefined
        : Number(toSi(UNITS[unit], fromSi(before, mark.value)).toPrecision(12)),
  });
  const marks = [taken(was.marks[0]), taken(was.marks[1])] as const;
  return { ...chart, axes: { ...chart.axes, [axis]: { ...was, unit, marks } } };
}

function withAxisMark(
  chart: TracedChart,
  { axis, index }: AxisMarkName,
  change: Partial<AxisMark>,
): TracedChart {
  const was = chart.axes[axis];
  const [first, second] = was.marks;
  const marks: TracedAxis['marks'] =
    index === 0 ? [{ ...first, ...change }, second] : [first, { ...second, ...change }];
  return { ...chart, axes: { ...chart.axes, [axis]: { ...was, marks } } };
}
