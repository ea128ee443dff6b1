// Points of a curve while they are being typed: rows that may be half filled, in any order, and what
// is wrong with them.

import type { CurvePoint } from '../curve/curve-data.ts';
import { formatQuantity } from '../units/format.ts';
import type { UnitSystem } from '../units/quantity.ts';

/** One row of the table. */
export interface PointRow {
  /** Stays the same wherever the row moves. */
  readonly key: number;
  /** [m³/s] */
  readonly flow: number | undefined;
  /** [Pa] */
  readonly pressure: number | undefined;
}

/** What the rows amount to. */
export interface JudgedRows {
  /** The points by rising flow; undefined as long as they make no curve. */
  readonly points: readonly CurvePoint[] | undefined;
  /** What is wrong with a row, by its key. */
  readonly problems: ReadonlyMap<number, string>;
  /** What is wrong with all of them, empty where nothing is. */
  readonly problem: string;
  /** How many have a flow without a pressure or the other way round. */
  readonly halfFilled: number;
}

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
 * @returns the points, or the problems
 */
export function judgeRows(rows: readonly PointRow[], units: UnitSystem): JudgedRows {
  const filled = sortedRows(rows).flatMap(({ key, flow, pressure }) =>
    flow === undefined || pressure === undefined ? [] : [{ key, flow, pressure }],
  );
  const doubles = filled.filter(({ flow }, i) => flow === filled[i - 1]?.flow);
  const problems = new Map(
    doubles.map(({ key, flow }) => {
      const shown = formatQuantity('flow', units, flow).text;
      return [key, `${shown} stands here a second time; a flow has one pressure.`];
    }),
  );
  const problem = wholeProblem(filled, doubles.length);
  const points = filled.map(({ flow, pressure }) => ({ flow, pressure }));
  const halfFilled = rows.filter(
    ({ flow, pressure }) => (flow === undefined) !== (pressure === undefined),
  ).length;
  return { points: problem === '' ? points : undefined, problems, problem, halfFilled };
}

function wholeProblem(filled: readonly CurvePoint[], doubles: number): string {
  if (filled.length < 2) {
    return 'A curve needs two points at least: no flow and free flow, and better six or eight.';
  }
  if (doubles > 0)
    return 'One flow stands there twice. Until that is put right the former points hold.';
  if (!filled.some(({ pressure }) => pressure > 0)) {
    return 'No pressure is above zero. Type suction as a positive number.';
  }
  return '';
}
