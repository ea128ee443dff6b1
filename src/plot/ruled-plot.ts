// The part of the operating-point plot that stays put while gates move: axes, ticks, and the
// collector's curve. It changes with the collector, the air, the units and the size on the page.

import type { CollectorCurve } from '../curve/collector-curve.ts';
import type { UnitSystem } from '../units/quantity.ts';
import { type Axis, axis } from './axis.ts';
import { type CollectorLine, collectorLine } from './collector-line.ts';
import { type Box, type PlotFrame, plotFrame } from './frame.ts';
import { plotExtent } from './plot-extent.ts';

/** Size of the drawing on the page [px]. */
export interface PlotSize {
  readonly width: number;
  readonly height: number;
}

/** Axes and collector's curve, ready to draw. */
export interface RuledPlot {
  readonly size: PlotSize;
  readonly frame: PlotFrame;
  readonly flow: Axis;
  readonly pressure: Axis;
  readonly collector: CollectorLine;
  /** Where there is little room, units stand with the ticks instead of titles beside the axes. */
  readonly compact: boolean;
}

/** Room for tick labels and axis titles around the frame [px]. */
const MARGIN = { left: 48, right: 14, top: 30, bottom: 44 };
const COMPACT_MARGIN = { left: 36, right: 10, top: 20, bottom: 24 };
/** A drawing lower than this has no room for axis titles [px]. */
const COMPACT_BELOW = 260;
/** One tick for about so much of an axis [px]. */
const TICK_SPACING = { across: 120, down: 72 };

/**
 * Rules the plot of a collector.
 *
 * @param curve - the collector as it runs now
 * @param system - units of the ticks
 * @param size - of the drawing; the frame needs room inside it, so 120 by 120 at least [px]
 * @returns axes and curve
 * @throws RangeError if the drawing is smaller than that
 */
export function ruledPlot(curve: CollectorCurve, system: UnitSystem, size: PlotSize): RuledPlot {
  if (!(size.width >= 120 && size.height >= 120)) {
    throw new RangeError(`a plot needs 120 by 120 px, not ${size.width} by ${size.height}`);
  }
  const compact = size.height < COMPACT_BELOW;
  const margin = compact ? COMPACT_MARGIN : MARGIN;
  const inner: Box = {
    left: margin.left,
    top: margin.top,
    right: size.width - margin.right,
    bottom: size.height - margin.bottom,
  };
  const extent = plotExtent(curve);
  const across = Math.max(2, Math.round((inner.right - inner.left) / TICK_SPACING.across));
  const down = Math.max(2, Math.round((inner.bottom - inner.top) / TICK_SPACING.down));
  const flow = axis('flow', system, extent.flow, across);
  const pressure = axis('pressure', system, extent.pressure, down);
  const frame = plotFrame(inner, flow.end, pressure.end);
  return {
    size,
    frame,
    flow,
    pressure,
    collector: collectorLine(curve, frame),
    compact,
  };
}
