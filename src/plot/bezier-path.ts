// Cubic pieces as SVG path data. A cubic with known ends and end slopes is a Bézier segment exactly:
// its inner control points lie a third of the way along the end tangents. Nothing is approximated.
//
// 1. G. Farin, Curves and Surfaces for CAGD (5th ed., 2002), ch. 6: cubic Hermite form as Bézier.

import type { PlotFrame } from './frame.ts';

/** A value with its slope at one flow. */
export interface Knot {
  /** Flow [m³/s] */
  readonly flow: number;
  /** Pressure there [Pa] */
  readonly pressure: number;
  /** Its slope there [Pa·s/m³] */
  readonly slope: number;
}

/**
 * The cubic pieces through neighbouring knots as one path.
 *
 * @param knots - at least two, by rising flow; between two of them the curve is one cubic
 * @param frame - the plot's scales
 * @returns path data in [px], rounded to a thousandth
 * @throws RangeError if there are fewer than two knots
 */
export function bezierPath(knots: readonly Knot[], frame: PlotFrame): string {
  const [first, ...rest] = knots;
  if (!first || rest.length === 0) {
    throw new RangeError(`a curve needs two knots at least, not ${knots.length}`);
  }
  let path = `M${place(frame, first.flow, first.pressure)}`;
  let from = first;
  for (const to of rest) {
    const third = (to.flow - from.flow) / 3;
    const leaving = place(frame, from.flow + third, from.pressure + third * from.slope);
    const arriving = place(frame, to.flow - third, to.pressure - third * to.slope);
    path += `C${leaving} ${arriving} ${place(frame, to.flow, to.pressure)}`;
    from = to;
  }
  return path;
}

function place(frame: PlotFrame, flow: number, pressure: number): string {
  return `${rounded(frame.x(flow))},${rounded(frame.y(pressure))}`;
}

function rounded(length: number): number {
  return Math.round(length * 1000) / 1000;
}
