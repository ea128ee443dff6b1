// What a curve must be beyond its shape: points by rising flow, and some pressure at least.
// Points that are set aside are held to nothing.

import type { Curve } from '../schema/curve-schema.ts';
import { checkTest } from './check-test.ts';
import { type Path, placeOf } from './place.ts';
import type { Problem } from './problem.ts';

/**
 * Too few used points, points out of order or repeated, a curve that never gives any pressure, and
 * two throttle settings of one id.
 *
 * @param curve - a curve whose parts have the right shape
 * @param path - where the curve stands in the document
 * @returns a problem for each
 */
export function checkCurve(curve: Curve, path: Path): Problem[] {
  const points = [...path, 'points'];
  const power = (curve.power ?? []).map((point, at) => ({ at, flow: point.flow }));
  return [
    ...checkUsed(curve, points),
    ...checkOrder(power, [...path, 'power']),
    ...checkTest(curve.test, [...path, 'test']),
  ];
}

function checkUsed(curve: Curve, path: Path): Problem[] {
  const used = curve.points.flatMap((point, at) =>
    point.aside === true ? [] : [{ at, ...point }],
  );
  const whole = (message: string) => [{ place: placeOf(path, undefined), message }];
  if (used.length < 2) {
    const left = used.length === 0 ? 'are all set aside' : 'are set aside but for one';
    return whole(`${left}; at least two must be used`);
  }
  const problems = curve.fit?.kind === 'smooth' ? checkSpread(used, path) : checkOrder(used, path);
  if (used.some((point) => point.pressure > 0)) return problems;
  const message = 'hold no pressure above 0 [Pa]; suction is entered as a positive number';
  return [...problems, ...whole(message)];
}

/** A smoothed line needs two different flows; the order of the readings doesn't matter. */
function checkSpread(used: readonly { readonly flow: number }[], path: Path): Problem[] {
  const flow = used[0]?.flow;
  if (used.some((point) => point.flow !== flow)) return [];
  const message = `all stand at one flow, ${flow} [m³/s]; a line needs two different ones at least`;
  return [{ place: placeOf(path, undefined), message }];
}

function checkOrder(
  points: readonly { readonly at: number; readonly flow: number }[],
  path: Path,
): Problem[] {
  return points.flatMap(({ at, flow }, i) => {
    const before = points[i - 1]?.flow;
    if (before === undefined || flow > before) return [];
    const found =
      flow === before
        ? `is ${flow} a second time; a flow has one pressure`
        : `is ${flow} after ${before}`;
    return [
      {
        place: placeOf([...path, at, 'flow'], undefined),
        message: `${found}; the flow must rise from each point to the next`,
      },
    ];
  });
}
