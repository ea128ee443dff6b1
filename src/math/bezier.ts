// A Hermite spline as cubic Bézier segments, so that a drawing program draws the very same line.
// Source: G. Farin, Curves and Surfaces for CAGD (5th ed., 2002), ch. 6 (from memory, unverified).

import type { HermiteSpline } from './hermite.ts';

/** A place in the plane of the spline. */
export interface BezierPoint {
  readonly x: number;
  readonly y: number;
}

/** One cubic: it leaves `from` towards `leaving` and comes into `to` out of `arriving`. */
export interface BezierSegment {
  readonly from: BezierPoint;
  readonly leaving: BezierPoint;
  readonly arriving: BezierPoint;
  readonly to: BezierPoint;
}

/**
 * The pieces of a spline as Bézier segments. Exact: the inner control points lie a third of the
 * piece's width along the slope at either end, so x runs evenly and y is the piece's own cubic.
 *
 * @param spline - the knots, values and slopes
 * @returns one segment for each pair of neighbouring knots, by rising x
 * @example
 * bezierSegments({ x: [0, 3], y: [0, 6], slope: [1, 4] })[0].leaving; // => { x: 1, y: 1 }
 * bezierSegments({ x: [0, 3], y: [0, 6], slope: [1, 4] })[0].arriving; // => { x: 2, y: 2 }
 */
export function bezierSegments(spline: HermiteSpline): BezierSegment[] {
  const knot = (i: number) => ({
    x: spline.x[i] as number,
    y: spline.y[i] as number,
    slope: spline.slope[i] as number,
  });
  return Array.from({ length: spline.x.length - 1 }, (_, i) => {
    const start = knot(i);
    const end = knot(i + 1);
    const third = (end.x - start.x) / 3;
    return {
      from: { x: start.x, y: start.y },
      leaving: { x: start.x + third, y: start.y + third * start.slope },
      arriving: { x: end.x - third, y: end.y - third * end.slope },
      to: { x: end.x, y: end.y },
    };
  });
}
