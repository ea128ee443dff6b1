// The plot in which a collector's curve is entered: its points as marks that can be moved, the line
// through them as entered, and beside it what is left for the ducts once all that the entered pressures
// hold or lack has been reckoned with. The gap between the two is measured at the operating point. (Over
// 200 lines: half of them say what the shapes of data hold.)

import { availableSlope, availableSuction, type CollectorCurve } from '../curve/collector-curve.ts';
import type { CurvePoint } from '../curve/curve-data.ts';
import { freeFlow } from '../curve/free-flow.ts';
import { type HermiteSpline, slopeAt, valueAt } from '../math/hermite.ts';
import type { UnitSystem } from '../units/quantity.ts';
import { type Axis, axis } from './axis.ts';
import { bezierPath, type Knot } from './bezier-path.ts';
import { type Box, boxAround, type Place, type PlotFrame, plotFrame } from './frame.ts';
import type { FlowPoint } from './moving-plot.ts';
import { type Obstacles, strokesAlong } from './obstacles.ts';
import { type LabelSize, type LabelSpot, placeAnywhere, placeLabel } from './place-label.ts';
import type { PlotSize } from './ruled-plot.ts';

/** What is plotted. */
export interface EnteredCurve {
  /** By rising flow; those set aside among them. */
  readonly points: readonly CurvePoint[];
  /** The line through the used points, as entered [m³/s] to [Pa]. */
  readonly entered: HermiteSpline;
  /** What the ducts get; undefined where there is no shop yet. */
  readonly available: CollectorCurve | undefined;
  readonly point: FlowPoint | undefined;
}

/** Axes and their ends. They are kept while a point moves. */
export interface CurveRule {
  readonly size: PlotSize;
  readonly frame: PlotFrame;
  readonly flow: Axis;
  readonly pressure: Axis;
}

/** The mark of a point [px]. */
export interface PointMark extends Place {
  readonly isAside: boolean;
}

/** Both pressures at the operating flow, where they differ by more than a mark's width. */
export interface CurveGap {
  /** Flow at which they are read [m³/s] */
  readonly flow: number;
  /** Pressure as entered, less the suction that the ducts get [Pa] */
  readonly difference: number;
  readonly entered: Place;
  readonly available: Place;
  /** Where its number stands. */
  readonly number: Box | undefined;
  /** That place as seen from the gap; kept, it saves the number from hopping about. */
  readonly spot: LabelSpot | undefined;
}

/** How the gap's number is written. */
export interface GapNumber {
  /** How large it comes out for a difference [Pa]. */
  readonly size: (difference: number) => LabelSize;
  /** Where it stood before. */
  readonly last?: LabelSpot | undefined;
}

/** Ready to be drawn [px]. */
export interface CurvePlotParts {
  readonly marks: readonly PointMark[];
  readonly entered: string;
  readonly unknown: readonly string[];
  /** What the ducts get; empty where that is the entered line. */
  readonly available: string;
  readonly point: Place | undefined;
  readonly gap: CurveGap | undefined;
  /** Middles of the two lines' labels, which begin there; undefined where there is one line. */
  readonly labels: { readonly entered: Place; readonly available: Place } | undefined;
}

const MARGIN = { left: 44, right: 14, top: 24, bottom: 40 };
const HEADROOM = { flow: 1.08, pressure: 1.15 };
/** How far past the last point the free flow is followed, over that point's flow [-]. */
const FURTHEST = 1.3;
const TICK_SPACING = { across: 100, down: 56 };
/** Two lines closer than this at the operating point count as one [px]. */
const SAME = 1.5;
/** Where the lines' labels begin, over the width [-], and how far from the line their middle is [px]. */
const LABEL_AT = 0.05;
const LABEL_ROOM = 14;
/** About as wide as the longer of them [px]. */
const LABEL_WIDTH = 126;
const LABEL_HEIGHT = 16;
/** How far from the gap's middle its number may stand, nearest first [px]. */
const NUMBER_DISTANCES = [8, 16, 24, 36, 50, 66];
/** The lines are nearly straight between their knots, and are drawn often [strokes a piece]. */
const LINE_STROKES = 4;
/** Half the side of the square that a mark keeps free [px]. */
const MARK_ROOM = 6;

/**
 * Rules the axes, with room to move points outward.
 *
 * @param curve - what is plotted
 * @param units - units of the ticks
 * @param size - of the drawing, 120 by 120 at least [px]
 * @returns frame and axes
 */
export function curveRule(curve: EnteredCurve, units: UnitSystem, size: PlotSize): CurveRule {
  const inner = {
    left: MARGIN.left,
    top: MARGIN.top,
    right: size.width - MARGIN.right,
    bottom: size.height - MARGIN.bottom,
  };
  const last = Math.max(...curve.points.map(({ flow }) => flow), 1e-3);
  const free = curve.available ? freeFlow(curve.available) : last;
  const flowEnd = HEADROOM.flow * Math.max(last, Math.min(free, FURTHEST * last));
  const highest = Math.max(...curve.points.map(({ pressure }) => pressure), 1);
  const given = curve.available ? availableSuction(curve.available, 0) : 0;
  const pressureEnd = HEADROOM.pressure * Math.max(highest, given);
  const across = Math.max(2, Math.round((inner.right - inner.left) / TICK_SPACING.across));
  const down = Math.max(2, Math.round((inner.bottom - inner.top) / TICK_SPACING.down));
  return {
    size,
    frame: plotFrame(inner, flowEnd, pressureEnd),
    flow: axis('flow', units, flowEnd, across),
    pressure: axis('pressure', units, pressureEnd, down),
  };
}

/**
 * Draws the curve on ruled axes.
 *
 * @param curve - what is plotted
 * @param rule - frame and axes
 * @param number - of the gap
 * @returns paths and marks [px]; lines may leave the frame and are to be clipped
 */
export function curvePlot(
  curve: EnteredCurve,
  { frame }: CurveRule,
  number: GapNumber,
): CurvePlotParts {
  const { entered, available, point } = curve;
  const knots = Array.from(entered.x, (flow) => enteredKnot(entered, flow));
  const first = knots[0]!;
  const last = knots.at(-1)!;
  const unknown: Knot[][] = [];
  if (first.flow > 0) unknown.push([enteredKnot(entered, 0), first]);
  if (last.flow < frame.flowEnd) unknown.push([last, enteredKnot(entered, frame.flowEnd)]);
  const differs = available !== undefined && isOther(entered, available, frame);
  const marks = curve.points.map(({ flow, pressure, aside }) => ({
    x: frame.x(flow),
    y: frame.y(pressure),
    isAside: aside === true,
  }));
  const given = differs ? availableKnots(available, frame) : [];
  const labels = differs ? labelsAt(entered, available, frame) : undefined;
  const gap = differs && point ? gapAt(entered, available, point.flow, frame) : undefined;
  const obstacles = () => ({
    strokes: [knots, ...unknown, given].flatMap((line) => strokesAlong(line, frame, LINE_STROKES)),
    boxes: [
      ...[...marks, ...(gap ? [gap.available] : [])].map((mark) => boxAround(mark, MARK_ROOM)),
      ...(labels ? [labelBox(labels.entered), labelBox(labels.available)] : []),
    ],
  });
  return {
    marks,
    entered: bezierPath(knots, frame),
    unknown: unknown.map((stretch) => bezierPath(stretch, frame)),
    available: differs ? bezierPath(given, frame) : '',
    point: point && { x: frame.x(point.flow), y: frame.y(point.suction) },
    gap: gap && { ...gap, ...numberAt(gap, number, frame, obstacles()) },
    labels,
  };
}

/**
 * Where a moved mark puts its point: between its neighbours, inside the plot, on a number that can be
 * shown.
 *
 * @param points - by rising flow
 * @param at - which of them is moved
 * @param wanted - where to, flow [m³/s] and pressure [Pa]
 * @param ends - of the axes, flow [m³/s] and pressure [Pa]
 * @param digits - last digits shown of a flow [m³/s] and of a pressure [Pa]
 * @returns the point there
 */
export function movedPoint(
  points: readonly CurvePoint[],
  at: number,
  wanted: { readonly flow: number; readonly pressure: number },
  ends: { readonly flow: number; readonly pressure: number },
  digits: { readonly flow: number; readonly pressure: number },
): CurvePoint {
  const point = points[at];
  if (!point) throw new RangeError(`there is no point ${at}`);
  const low = at === 0 ? 0 : points[at - 1]!.flow + digits.flow;
  const high = at === points.length - 1 ? ends.flow : points[at + 1]!.flow - digits.flow;
  const flow =
    low > high ? point.flow : Math.min(high, Math.max(low, onDigit(wanted.flow, digits.flow)));
  const pressure = Math.min(ends.pressure, Math.max(0, onDigit(wanted.pressure, digits.pressure)));
  return { ...point, flow: tidy(flow), pressure: tidy(pressure) };
}

function onDigit(value: number, digit: number): number {
  return Math.round(value / digit) * digit;
}

/** Without the rounding of the conversion, which would be kept in the document. */
function tidy(value: number): number {
  return Number(value.toPrecision(12));
}

function enteredKnot(entered: HermiteSpline, flow: number): Knot {
  return { flow, pressure: valueAt(entered, flow), slope: slopeAt(entered, flow) };
}

/** Between neighbouring knots the available suction is one cubic too. */
function availableKnots(curve: CollectorCurve, frame: PlotFrame): Knot[] {
  const inner = Array.from(curve.spline.x, (x) => x * curve.flowScale);
  const flows = [0, ...inner.filter((flow) => flow > 0 && flow < frame.flowEnd), frame.flowEnd];
  return flows.map((flow) => ({
    flow,
    pressure: availableSuction(curve, flow),
    slope: availableSlope(curve, flow),
  }));
}

/** Near the start: above the upper line where it begins, below the lower one where its label ends. */
function labelsAt(entered: HermiteSpline, available: CollectorCurve, frame: PlotFrame) {
  const { left, right } = frame.inner;
  const x = left + LABEL_AT * (right - left);
  const flows = [x, x + LABEL_WIDTH].map((at) => (frame.flowEnd * (at - left)) / (right - left));
  const heights = (pressureAt: (flow: number) => number) =>
    flows.map((flow) => frame.y(pressureAt(flow)));
  const before = heights((flow) => valueAt(entered, flow));
  const after = heights((flow) => availableSuction(available, flow));
  const above = (line: readonly number[]) => ({ x, y: Math.min(...line) - LABEL_ROOM });
  const below = (line: readonly number[]) => ({ x, y: Math.max(...line) + LABEL_ROOM });
  return before[0]! <= after[0]!
    ? { entered: above(before), available: below(after) }
    : { entered: below(before), available: above(after) };
}

function isOther(entered: HermiteSpline, available: CollectorCurve, frame: PlotFrame): boolean {
  return Array.from(entered.x).some((flow) => {
    const apart = frame.y(valueAt(entered, flow)) - frame.y(availableSuction(available, flow));
    return Math.abs(apart) > SAME;
  });
}

function gapAt(
  entered: HermiteSpline,
  available: CollectorCurve,
  flow: number,
  frame: PlotFrame,
): Omit<CurveGap, 'number' | 'spot'> {
  const before = valueAt(entered, flow);
  const after = availableSuction(available, flow);
  return {
    flow,
    difference: before - after,
    entered: { x: frame.x(flow), y: frame.y(before) },
    available: { x: frame.x(flow), y: frame.y(after) },
  };
}

/** Beside the gap where nothing is in the way, or else anywhere. */
function numberAt(
  { difference, entered, available }: Omit<CurveGap, 'number' | 'spot'>,
  { size, last }: GapNumber,
  { inner }: PlotFrame,
  lines: Obstacles,
): Pick<CurveGap, 'number' | 'spot'> {
  const obstacles = { ...lines, strokes: [...lines.strokes, { from: entered, to: available }] };
  const middle = { x: entered.x, y: (entered.y + available.y) / 2 };
  const room = size(difference);
  const search = { last, distances: NUMBER_DISTANCES };
  const beside = placeLabel(middle, room, inner, obstacles, search);
  return {
    number: beside?.box ?? placeAnywhere(middle, room, inner, obstacles),
    spot: beside?.spot,
  };
}

/** The room of a line's label, which begins at a place. */
function labelBox({ x, y }: Place): Box {
  return {
    left: x,
    right: x + LABEL_WIDTH,
    top: y - LABEL_HEIGHT / 2,
    bottom: y + LABEL_HEIGHT / 2,
  };
}
