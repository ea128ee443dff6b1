// Finds rows of a curve that were typed in another unit than the rest. A curve falls from point to
// point past its peak; where some rows, all multiplied by what lies between two units, make a jagged
// table fall evenly, they were very likely in the other unit.

import type { CurvePoint } from '../../curve/curve-data.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { shownUnit } from '../../units/quantity.ts';
import { type Unit, UNITS } from '../../units/unit.ts';
import type { RowDoubt } from './row-doubt.ts';

const UNITS_MIXED = {
  flow: [UNITS.cfm, UNITS.cubicMetrePerHour, UNITS.litrePerSecond, UNITS.cubicMetrePerSecond],
  pressure: [UNITS.inchOfWater, UNITS.pascal, UNITS.kilopascal, UNITS.millimetreOfWater],
} as const;
/** Fewer points don't tell, and of more than this not every set of rows can be tried. */
const COUNTS = { least: 5, most: 14 } as const;
/** At most so many rows are taken to be the odd ones, and always fewer than half. */
const MOST_ODD = 4;
/** Sum of rises and of cliffs over the greatest pressure, before and after [-] (our own choice). */
const JAGGED = 0.15;
const EVEN = 0.03;
/** What each further odd row costs, lest a few more make a line a little straighter [-] (our own). */
const PRICE = 0.02;
/** From one point to the next a curve doesn't fall to less than this part of its pressure [-], unless
 * it is the last one. */
const CLIFF = 0.12;

/**
 * Doubts about rows in another unit.
 *
 * @param points - used points, flow strictly rising
 * @param units - the units to speak in
 * @returns doubts by place in the list; none where the rows fit as they are
 */
export function otherUnitRows(
  points: readonly CurvePoint[],
  units: UnitSystem,
): ReadonlyMap<number, RowDoubt> {
  const none = new Map<number, RowDoubt>();
  if (points.length < COUNTS.least || points.length > COUNTS.most) return none;
  if (jaggedness(points) < JAGGED) return none;
  const most = Math.min(MOST_ODD, Math.ceil(points.length / 2) - 1);
  let best: { score: number; doubts: () => ReadonlyMap<number, RowDoubt> } | undefined;
  for (const what of ['flow', 'pressure'] as const) {
    const shown = shownUnit(what, units);
    for (const other of UNITS_MIXED[what]) {
      if (other === shown) continue;
      const put = points.map((point) => inUnit(point, what, shown, other));
      for (const set of sets(points.length, most)) {
        const tried = points.map((point, at) => (set.includes(at) ? put[at]! : point));
        tried.sort((a, b) => a.flow - b.flow);
        const score = bends(tried) + PRICE * set.length;
        if (score >= (best?.score ?? Number.POSITIVE_INFINITY) || jaggedness(tried) > EVEN)
          continue;
        const doubts = () =>
          new Map(set.map((at) => [at, doubt(points[at]!, put[at]!, what, units, other)]));
        best = { score, doubts };
      }
    }
  }
  return best?.doubts() ?? none;
}

/** What was typed in the shown unit, taken in the other one. */
function inUnit(
  point: CurvePoint,
  what: 'flow' | 'pressure',
  shown: Unit,
  other: Unit,
): CurvePoint {
  return { ...point, [what]: Number(((point[what] / shown.size) * other.size).toPrecision(12)) };
}

function doubt(
  was: CurvePoint,
  point: CurvePoint,
  what: 'flow' | 'pressure',
  units: UnitSystem,
  other: Unit,
): RowDoubt {
  const show = (value: number) => formatQuantity(what, units, value);
  const { number } = show(was[what]);
  return {
    words: `This row does not fit the others. If ${number} was meant in ${other.label}, it is ${show(point[what]).text}, and it fits.`,
    remedies: [
      { kind: 'replace', words: `Take it as ${number} ${other.label}`, point },
      { kind: 'aside', words: 'Set it aside' },
    ],
  };
}

/** Rises past the peak, and cliffs, over the greatest pressure [-]. A hump before it is none. */
function jaggedness(points: readonly CurvePoint[]): number {
  const greatest = Math.max(...points.map(({ pressure }) => pressure));
  if (!(greatest > 0)) return 0;
  let sum = 0;
  for (let at = 1; at < points.length; at++) {
    const step = points[at]!.pressure - points[at - 1]!.pressure;
    const isLast = at === points.length - 1;
    const falls = points[at]!.pressure < CLIFF * points[at - 1]!.pressure;
    if (step > 0) sum += step;
    else if (falls && !isLast) sum -= step;
    // Equal flows can't be of one curve.
    if (points[at]!.flow <= points[at - 1]!.flow) sum += greatest;
  }
  return sum / greatest;
}

/** How far points lie from the straight line between their neighbours, over the greatest pressure [-]. */
function bends(points: readonly CurvePoint[]): number {
  const greatest = Math.max(...points.map(({ pressure }) => pressure));
  let sum = 0;
  for (let at = 1; at < points.length - 1; at++) {
    const [before, point, after] = [points[at - 1]!, points[at]!, points[at + 1]!];
    const part = (point.flow - before.flow) / (after.flow - before.flow);
    const straight = before.pressure + part * (after.pressure - before.pressure);
    sum += Math.abs(point.pressure - straight);
  }
  return sum / greatest;
}

/** Every set of one place or more out of `length`, `most` at most. */
function sets(length: number, most: number): readonly (readonly number[])[] {
  const all: number[][] = [];
  const grow = (set: readonly number[]) => {
    for (let at = (set.at(-1) ?? -1) + 1; at < length; at++) {
      const next = [...set, at];
      all.push(next);
      if (next.length < most) grow(next);
    }
  };
  grow([]);
  return all;
}
