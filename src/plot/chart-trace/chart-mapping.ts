// Reads a chart off its picture. Two places of known value on each axis fix the chart, however it lies
// on the picture: turned, skewed, or with an axis that grows by factors instead of by steps.
//
// With marks A, B on the flow axis and C, D on the pressure axis, lines of one flow run along CD and
// lines of one pressure along AB. So a place is A + s·(B − A) + t·(D − C), its flow follows from s;
// and it is C + s′·(B − A) + t′·(D − C), its pressure follows from t′. It is exact for any oblique
// chart, not for one in perspective.

import type { Place } from '../frame.ts';

/** How the values run along an axis. */
export type AxisScale = 'linear' | 'logarithmic';

/** The two axes of the chart. */
export type AxisName = 'flow' | 'pressure';

/** A place on the picture whose value is known. */
export interface KnownMark {
  /** On the picture [px] */
  readonly place: Place;
  /** Flow [m³/s] or pressure [Pa] there */
  readonly value: number;
}

/** An axis, fixed by two marks. */
export interface ChartAxis {
  readonly scale: AxisScale;
  readonly marks: readonly [KnownMark, KnownMark];
}

/** What a place on the chart stands for. */
export interface ChartValue {
  /** [m³/s] */
  readonly flow: number;
  /** [Pa] */
  readonly pressure: number;
}

/** A chart that can be read, or why it can't. */
export type ChartMapping =
  | { readonly kind: 'ready'; readonly read: (place: Place) => ChartValue }
  /** The marks of an axis are too near to each other to fix it. */
  | { readonly kind: 'too near'; readonly axis: AxisName }
  | { readonly kind: 'same value'; readonly axis: AxisName }
  /** An axis that grows by factors has no zero and nothing below it. */
  | { readonly kind: 'not above zero'; readonly axis: AxisName }
  | { readonly kind: 'parallel' };

/** Marks of one axis must be so far apart [px]. */
export const LEAST_APART = 8;
/** Axes must cross at such an angle at least: its sine, of about 6 degrees [-]. */
const LEAST_SINE = 0.1;

/**
 * Fixes a chart by its axes.
 *
 * @param axes - both axes with their marks [px] and values [m³/s], [Pa]
 * @returns a function from a place [px] to its values, or what is wrong with the marks
 */
export function chartMapping(axes: Readonly<Record<AxisName, ChartAxis>>): ChartMapping {
  for (const axis of ['flow', 'pressure'] as const) {
    const { scale, marks } = axes[axis];
    const [first, second] = marks;
    const along = difference(second.place, first.place);
    if (Math.hypot(along.x, along.y) < LEAST_APART) return { kind: 'too near', axis };
    if (scale === 'logarithmic' && !marks.every(({ value }) => value > 0)) {
      return { kind: 'not above zero', axis };
    }
    if (first.value === second.value) return { kind: 'same value', axis };
  }
  const [flow, pressure] = [axes.flow, axes.pressure];
  const across = difference(flow.marks[1].place, flow.marks[0].place);
  const up = difference(pressure.marks[1].place, pressure.marks[0].place);
  const area = cross(across, up);
  const sine = area / (Math.hypot(across.x, across.y) * Math.hypot(up.x, up.y));
  if (Math.abs(sine) < LEAST_SINE) return { kind: 'parallel' };
  return {
    kind: 'ready',
    read: (place) => ({
      flow: valueAlong(flow, cross(difference(place, flow.marks[0].place), up) / area),
      pressure: valueAlong(
        pressure,
        cross(across, difference(place, pressure.marks[0].place)) / area,
      ),
    }),
  };
}

/** The value at a part of the way from the first mark to the second, or beyond. */
function valueAlong({ scale, marks: [first, second] }: ChartAxis, part: number): number {
  return scale === 'linear'
    ? first.value + part * (second.value - first.value)
    : first.value * (second.value / first.value) ** part;
}

function difference(to: Place, from: Place): Place {
  return { x: to.x - from.x, y: to.y - from.y };
}

function cross(a: Place, b: Place): number {
  return a.x * b.y - a.y * b.x;
}
