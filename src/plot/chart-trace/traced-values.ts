// What a chart that is being traced gives so far: how it is read, what its points stand for, and what
// is wrong with its marks.

import type { CurvePoint } from '../../curve/curve-data.ts';
import {
  type ChartAxis,
  type ChartMapping,
  chartMapping,
  type MarksFault,
  placesFault,
  valuesFault,
} from './chart-mapping.ts';
import type { AxisMark, TracedAxis, TracedChart } from './traced-chart.ts';

/** A point set by hand on an axis may come out below 0 by this part of what is marked [-]. */
const SLIP = 0.01;

/** What is wrong with the marks that are set so far; undefined where there is nothing. */
export function faultOf(chart: TracedChart): MarksFault | undefined {
  for (const axis of ['flow', 'pressure'] as const) {
    const {
      scale,
      marks: [first, second],
    } = chart.axes[axis];
    const places =
      first.place && second.place ? placesFault(axis, first.place, second.place) : undefined;
    const fault = places ?? valuesFault(axis, scale, [first.value, second.value]);
    if (fault) return fault;
  }
  const mapping = mappingOf(chart);
  return mapping?.kind === 'ready' ? undefined : mapping;
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
  return chart.points.map((place) => {
    const { flow, pressure } = mapping.read(place);
    return {
      flow: withoutSlip(flow, chart.axes.flow),
      pressure: withoutSlip(pressure, chart.axes.pressure),
    };
  });
}

function withoutSlip(value: number, { marks }: TracedAxis): number {
  const most = Math.max(...marks.map((mark) => Math.abs(mark.value ?? 0)));
  return value < 0 && value > -SLIP * most ? 0 : value;
}

function wholeAxis({ scale, marks: [first, second] }: TracedAxis): ChartAxis | undefined {
  const [a, b] = [wholeMark(first), wholeMark(second)];
  return a && b && { scale, marks: [a, b] };
}

function wholeMark({ place, value }: AxisMark): ChartAxis['marks'][0] | undefined {
  return place === undefined || value === undefined ? undefined : { place, value };
}
