// The two lines of the operating-point plot, value by value: what the collector gives and what the
// ducts ask at a flow, and what has to be known of it. Its reading and its table both come from here.

import { scaleLinear } from 'd3-scale';
import { availableSuction, type CollectorCurve } from '../curve/collector-curve.ts';
import { enteredRange } from '../curve/entered-range.ts';
import { peakFlow } from '../curve/peak-flow.ts';
import { type HermiteSpline, valueAt } from '../math/hermite.ts';
import { fromDisplay, toDisplay, type UnitSystem } from '../units/quantity.ts';
import type { Knot } from './bezier-path.ts';
import type { FlowPoint } from './moving-plot.ts';

/** Both lines in one state of the gates. */
export interface OperatingLines {
  readonly curve: CollectorCurve;
  /** What the collector is called. */
  readonly collector: string;
  /** What the ducts ask, by rising flow; fewer than two knots are no line. */
  readonly system: readonly Knot[];
  readonly point: FlowPoint | undefined;
}

/** What the ducts' line is called. */
export const DUCTS_LABEL = 'ducts, as open now';

/** Flows nearer to the operating point than this give way to it, over the whole axis [-]. */
const SAME_FLOW = 0.002;

/**
 * Round flows in the reader's units, and the operating point among them.
 *
 * @param units - the units to be round in
 * @param end - where the axis ends, above 0 [m³/s]
 * @param wanted - about how many to have [-]
 * @param point - the operating point, if there is one
 * @returns flows from 0, rising [m³/s]
 */
export function roundFlows(
  units: UnitSystem,
  end: number,
  wanted: number,
  point: FlowPoint | undefined,
): number[] {
  const round = scaleLinear([0, toDisplay('flow', units, end)], [0, 1])
    .ticks(wanted)
    .map((shown) => fromDisplay('flow', units, shown));
  if (!point || point.flow > end) return round;
  const apart = round.filter((flow) => Math.abs(flow - point.flow) > SAME_FLOW * end);
  return [...apart, point.flow].toSorted((a, b) => a - b);
}

/**
 * What the collector gives.
 *
 * @param lines - the plot's lines
 * @param flow - flow at the flange [m³/s]
 * @returns suction left at the flange [Pa]; undefined where it gives none
 */
export function given({ curve }: OperatingLines, flow: number): number | undefined {
  const suction = availableSuction(curve, flow);
  return suction >= 0 ? suction : undefined;
}

/**
 * What the ducts ask.
 *
 * @param lines - the plot's lines
 * @returns a function from flow [m³/s] to suction [Pa]; undefined where the line doesn't reach
 */
export function asking({ system }: OperatingLines): (flow: number) => number | undefined {
  const last = system.at(-1);
  if (!last || system.length < 2) return () => undefined;
  const spline: HermiteSpline = {
    x: Float64Array.from(system, ({ flow }) => flow),
    y: Float64Array.from(system, ({ pressure }) => pressure),
    slope: Float64Array.from(system, ({ slope }) => slope),
  };
  return (flow) => (flow <= last.flow ? valueAt(spline, flow) : undefined);
}

/**
 * What has to be known of the collector's curve at a flow.
 *
 * @param lines - the plot's lines
 * @param flow - flow at the flange [m³/s]
 * @returns a few words, or undefined where there is nothing to say
 */
export function curveRemark({ curve }: OperatingLines, flow: number): string | undefined {
  const { low, high } = enteredRange(curve);
  if (flow > high) return 'only continued, beyond the entered points';
  if (flow < low) return 'only continued, before the entered points';
  return flow < peakFlow(curve) ? 'left of the peak' : undefined;
}
