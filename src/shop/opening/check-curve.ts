// What a curve must be beyond its shape: points by rising flow, and some pressure at least.

import type { Curve } from '../schema/curve-schema.ts';
import { type Path, placeOf } from './place.ts';
import type { Problem } from './problem.ts';

/**
 * Points out of order or repeated, and a curve that never gives any pressure.
 *
 * @param curve - a curve whose parts have the right shape
 * @param path - where the curve stands in the document
 * @returns a problem for each
 */
export function checkCurve(curve: Curve, path: Path): Problem[] {
  const problems = [
    ...checkOrder(curve.points, [...path, 'points']),
    ...checkOrder(curve.power ?? [], [...path, 'power']),
  ];
  if (!curve.points.some((point) => point.pressure > 0)) {
    const message = 'hold no pressure above 0 [Pa]; suction is entered as a positive number';
    problems.push({ place: placeOf([...path, 'points'], undefined), message });
  }
  return problems;
}

function checkOrder(points: readonly { readonly flow: number }[], path: Path): Problem[] {
  return points.flatMap((point, i) => {
    const before = points[i - 1]?.flow;
    if (before === undefined || point.flow > before) return [];
    const found =
      point.flow === before
        ? `is ${point.flow} a second time; a flow has one pressure`
        : `is ${point.flow} after ${before}`;
    return [
      {
        place: placeOf([...path, i, 'flow'], undefined),
        message: `${found}; the flow must rise from each point to the next`,
      },
    ];
  });
}
