// Points of a curve while they are being typed: rows that may be half filled, in any order, and what
// is wrong with them.

import type { CurvePoint } from '../curve/curve-data.ts';
import { formatQuantity } from '../units/format.ts';
import type { UnitSystem } from '../units/quantity.ts';
import type { RowDoubt } from './collector/row-doubt.ts';
import { rowDoubts } from './collector/row-doubts.ts';

/** One row of the table. */
export interface PointRow {
  /** Stays the same wherever the row moves. */
  readonly key: number;
  /** [m³/s] */
  readonly flow: number | undefined;
  /** [Pa] */
  readonly pressure: number | undefined;
  /** Kept and shown, but not used. */
  readonly aside?: true;
}

/** What the rows amount to. */
export interface JudgedRows {
  /** The points by rising flow; undefined as long as they make no curve. */
  readonly points: readonly CurvePoint[] | undefined;
  /** What keeps a row from being used, by its key. */
  readonly problems: ReadonlyMap<number, string>;
  /** What looks wrong with a row that is used, by its key. */
  readonly doubts: ReadonlyMap<number, RowDoubt>;
  /** What is wrong with all of them, empty where nothing is. */
  readonly problem: string;
  /** How many have a flow without a pressure or the other way round. */
  readonly halfFilled: number;
}

/** How the line follows the points. */
export type FitKind = 'through' | 'smooth';

type FilledRow = CurvePoint & { readonly key: number };

/**
 * The rows by rising flow; those without a flow stay at the end, in their order.
 *
 * @param rows - as they stand
 * @returns the same rows, sorted
 */
export function sortedRows(rows: readonly PointRow[]): readonly PointRow[] {
  const rank = ({ flow }: PointRow) => flow ?? Number.POSITIVE_INFINITY;
  return rows.toSorted((a, b) => (rank(a) === rank(b) ? 0 : rank(a) - rank(b)));
}

/**
 * What rows amount to: a curve, or what stands in the way of one.
 *
 * @param rows - as they stand, in any order
 * @param units - the units to speak in
 * @param fit - through the points, which must then differ in flow, or smoothed between them
 * @returns the points, or the problems
 */
export function judgeRows(
  rows: readonly PointRow[],
  units: UnitSystem,
  fit: FitKind = 'through',
): JudgedRows {
  const filled = sortedRows(rows).flatMap(({ key, flow, pressure, aside }): FilledRow[] =>
    flow === undefined || pressure === undefined
      ? []
      : [{ key, flow, pressure, ...(aside ? { aside } : {}) }],
  );
  const used = filled.filter(({ aside }) => !aside);
  const doubles = fit === 'smooth' ? [] : used.filter(({ flow }, i) => flow === used[i - 1]?.flow);
  const problems = new Map(
    doubles.map(({ key, flow }) => {
      const shown = formatQuantity('flow', units, flow).text;
      return [
        key,
        `${shown} stands here a second time; a flow has one pressure. Change it, set one aside, or smooth through both.`,
      ];
    }),
  );
  const problem = wholeProblem(used, filled.length - used.length, doubles.length);
  const doubts = new Map<number, RowDoubt>();
  if (problem === '' && fit === 'through') {
    for (const [at, doubt] of rowDoubts(used, units)) doubts.set(used[at]!.key, doubt);
  }
  const points = filled.map(pointOf);
  const halfFilled = rows.filter(
    ({ flow, pressure }) => (flow === undefined) !== (pressure === undefined),
  ).length;
  return { points: problem === '' ? points : undefined, problems, doubts, problem, halfFilled };
}

function pointOf({ flow, pressure, aside }: FilledRow): CurvePoint {
  return aside ? { flow, pressure, aside } : { flow, pressure };
}

function wholeProblem(used: readonly CurvePoint[], aside: number, doubles: number): string {
  if (used.length < 2) {
    return aside > 0
      ? 'Two points at least must be used. Take one back that is set aside.'
      : 'A curve needs two points at least: no flow and free flow, and better six or eight.';
  }
  if (doubles > 0) {
    return 'One flow stands there twice. Until that is put right the former points hold.';
  }
  if (used.every(({ flow }) => flow === used[0]!.flow)) {
    return 'All points stand at one flow. A line needs two different ones at least.';
  }
  if (!used.some(({ pressure }) => pressure > 0)) {
    return 'No pressure is above zero. Type suction as a positive number.';
  }
  return '';
}
