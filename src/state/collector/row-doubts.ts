// What looks wrong with the points of a curve though they make one: a pressure that rises with
// the flow, one point away from the line of all others, some rows in another unit. Each is said at its row
// with what would fit; none of it is changed by itself.

import type { CurvePoint } from '../../curve/curve-data.ts';
import { valueAt } from '../../math/hermite.ts';
import { pchip } from '../../math/pchip.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { otherUnitRows } from './other-unit-rows.ts';
import type { RowDoubt } from './row-doubt.ts';

/** Fewer points don't tell which of them is astray. */
const LEAST_POINTS = 5;
/** A point counts as astray from this part of the greatest pressure [-], and so many times as far as
 * the others lie from each other's lines [-] (common practice, no source). */
const ASTRAY = { part: 0.06, times: 5 } as const;
/** A rise below this part of the greatest pressure is the roughness of a reading [-]. */
const ROUGHNESS = 0.005;

/**
 * Doubts about points, by their places.
 *
 * @param points - used points, flow strictly rising
 * @param units - the units to speak in
 * @returns doubts by place in the list
 */
export function rowDoubts(
  points: readonly CurvePoint[],
  units: UnitSystem,
): ReadonlyMap<number, RowDoubt> {
  const mixed = otherUnitRows(points, units);
  if (mixed.size > 0) return mixed;
  const astray = strayPoint(points);
  const doubts = new Map<number, RowDoubt>(rises(points, units, astray?.at));
  if (astray) {
    const { at, fitting } = astray;
    const point = points[at]!;
    const show = (pressure: number) => formatQuantity('pressure', units, pressure).text;
    const side = point.pressure > fitting ? 'above' : 'below';
    doubts.set(at, {
      words: `${show(point.pressure)} lies ${show(Math.abs(point.pressure - fitting))} ${side} the line of the other points. Check the reading; ${show(fitting)} would fit.`,
      remedies: [{ kind: 'aside', words: 'Set it aside' }],
    });
  }
  return doubts;
}

/**
 * The one point that lies away from the line through all others, if there is such a point. Without it
 * each of the others must lie near the line of the rest.
 *
 * @param points - flow strictly rising [m³/s], pressure [Pa]
 * @returns its place, and the pressure that would fit [Pa]
 */
export function strayPoint(
  points: readonly CurvePoint[],
): { readonly at: number; readonly fitting: number } | undefined {
  if (points.length < LEAST_POINTS) return undefined;
  const greatest = Math.max(...points.map(({ pressure }) => pressure));
  let best: { at: number; fitting: number; excess: number } | undefined;
  for (let at = 1; at < points.length - 1; at++) {
    const others = points.toSpliced(at, 1);
    const fitting = lineAt(others, points[at]!.flow);
    const away = Math.abs(points[at]!.pressure - fitting);
    // Most points are near enough, and need no look at how far the others lie.
    if (away <= ASTRAY.part * greatest) continue;
    const usual = median(awayFromOthers(others));
    const excess = away / Math.max(ASTRAY.part * greatest, ASTRAY.times * usual);
    if (excess > (best?.excess ?? 1)) best = { at, fitting, excess };
  }
  return best;
}

/** How far each inner point lies from the line of the others [Pa]. */
function awayFromOthers(points: readonly CurvePoint[]): number[] {
  return points
    .slice(1, -1)
    .map(({ flow, pressure }, i) => Math.abs(pressure - lineAt(points.toSpliced(i + 1, 1), flow)));
}

function lineAt(points: readonly CurvePoint[], flow: number): number {
  const line = pchip(
    points.map((point) => point.flow),
    points.map((point) => point.pressure),
  );
  return valueAt(line, flow);
}

function rises(
  points: readonly CurvePoint[],
  units: UnitSystem,
  astray: number | undefined,
): [number, RowDoubt][] {
  const greatest = Math.max(...points.map(({ pressure }) => pressure));
  const show = (pressure: number) => formatQuantity('pressure', units, pressure).text;
  return points.flatMap(({ pressure }, at): [number, RowDoubt][] => {
    const before = points[at - 1]?.pressure ?? pressure;
    const isRise = pressure - before > ROUGHNESS * greatest;
    if (!isRise || at - 1 === astray || at === astray) return [];
    const words = `The pressure rises here from ${show(before)} to ${show(pressure)} while the flow grows. Some wheels have such a hump and run unsteadily there; otherwise check this reading and the one before.`;
    return [[at, { words, remedies: [{ kind: 'aside', words: 'Set it aside' }] }]];
  });
}

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] ?? 0;
  return sorted.length % 2 === 1 ? upper : (upper + (sorted[middle - 1] ?? upper)) / 2;
}
