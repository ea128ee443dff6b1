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
  | MarksFault;

/** Why marks fix no chart. */
export type MarksFault = PlacesFault | ValuesFault | { readonly kind: 'parallel' };

/** The marks of an axis are too near to each other to fix it: so far apart only [px]. */
export interface PlacesFault {
  readonly kind: 'too near';
  readonly axis: AxisName;
  readonly apart: number;
}

export type ValuesFault =
  | { readonly kind: 'same value'; readonly axis: AxisName }
  /** An axis that grows by factors has no zero and nothing below it; which mark has. */
  | { readonly kind: 'not above zero'; readonly axis: AxisName; readonly index: 0 | 1 };

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
    const fault =
      placesFault(axis, marks[0].place, marks[1].place) ??
      valuesFault(axis, scale, [marks[0].value, marks[1].value]);
    if (fault) return fault;
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

/**
 * What is wrong with the places of an axis' marks.
 *
 * @param axis - which axis
 * @param first - place of its first mark [px]
 * @param second - place of its second mark [px]
 * @returns the fault; undefined where they fix the axis
 */
export function placesFault(axis: AxisName, first: Place, second: Place): PlacesFault | undefined {
  const { x, y } = difference(second, first);
  const apart = Math.hypot(x, y);
  return apart < LEAST_APART ? { kind: 'too near', axis, apart } : undefined;
}

/**
 * What is wrong with the values of an axis' marks, as far as they are known.
 *
 * @param axis - which axis
 * @param scale - how its values run
 * @param values - flows [m³/s] or pressures [Pa] of both marks
 * @returns the fault; undefined where there is none yet
 */
export function valuesFault(
  axis: AxisName,
  scale: AxisScale,
  values: readonly [number | undefined, number | undefined],
): ValuesFault | undefined {
  const [first, second] = values;
  if (scale === 'logarithmic') {
    if (first !== undefined && !(first > 0)) return { kind: 'not above zero', axis, index: 0 };
    if (second !== undefined && !(second > 0)) return { kind: 'not above zero', axis, index: 1 };
  }
  return first !== undefined && first === second ? { kind: 'same value', axis } : undefined;
}

/**
 * What a place is worth: how far the values move at most when it moves by a pixel.
 *
 * @param read - the chart
 * @param place - where [px]
 * @returns change of flow [m³/s] and of pressure [Pa]
 */
export function pixelWorth(read: (place: Place) => ChartValue, place: Place): ChartValue {
  const at = read(place);
  const right = read({ x: place.x + 1, y: place.y });
  const down = read({ x: place.x, y: place.y + 1 });
  const most = (what: keyof ChartValue) =>
    Math.hypot(right[what] - at[what], down[what] - at[what]);
  return { flow: most('flow'), pressure: most('pressure') };
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
