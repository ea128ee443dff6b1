// Least squares against other programs. Systems, readings, answers and tolerances stand in
// shared/checks-least-squares.json.

import { describe, expect, it } from 'vitest';
import table from '../../shared/checks-least-squares.json' with { type: 'json' };
import { fitQuality } from '../../src/curve/fit-quality.ts';
import { fallingFit } from '../../src/math/falling-fit.ts';
import { valueAt } from '../../src/math/hermite.ts';
import { solveLeastSquares } from '../../src/math/least-squares.ts';
import { solveNonNegative } from '../../src/math/non-negative-least-squares.ts';

interface SystemCheck {
  readonly name: string;
  readonly source: string;
  readonly tolerance: number;
  readonly columns: readonly (readonly number[])[];
  readonly target: readonly number[];
  readonly expected?: readonly number[];
  readonly expectedResidual: number;
}
interface FallingCheck {
  readonly name: string;
  readonly source: string;
  readonly tolerance: number;
  readonly flows: readonly number[];
  readonly pressures: readonly number[];
  readonly pieces?: number;
  readonly at: readonly number[];
  readonly expectedRSquared: number;
  readonly expectedRms: number;
  readonly expectedLargest: number;
  readonly expectedLargestResidual: number;
  readonly expected: readonly number[];
  readonly expectedResidual: number;
}

const rowsOf = (kind: string): unknown[] => table.rows.filter((row) => row.kind === kind);

/** Length of what is left of the target. */
function remainder({ columns, target }: SystemCheck, x: ArrayLike<number>): number {
  return Math.hypot(
    ...target.map((value, row) =>
      columns.reduce((sum, column, i) => sum - column[row]! * x[i]!, value),
    ),
  );
}

function expectSolution(row: SystemCheck, x: ArrayLike<number>) {
  expect(Math.abs(remainder(row, x) - row.expectedResidual)).toBeLessThanOrEqual(row.tolerance);
  row.expected?.forEach((value, i) => {
    expect(Math.abs(x[i]! - value)).toBeLessThanOrEqual(row.tolerance);
  });
}

describe.each(rowsOf('plain') as SystemCheck[])('$name ($source)', (row) => {
  it('has the same solution', () => {
    expectSolution(row, solveLeastSquares(row.columns, row.target)!);
  });
});

describe.each(rowsOf('non-negative') as SystemCheck[])('$name ($source)', (row) => {
  it('has the same solution, nothing in it below zero', () => {
    const x = solveNonNegative(row.columns, row.target, 0);
    expectSolution(row, x);
    for (const value of x) expect(value).toBeGreaterThanOrEqual(0);
  });
});

describe.each(rowsOf('falling') as FallingCheck[])('$name ($source)', (row) => {
  const line = fallingFit(row.flows, row.pressures, row.pieces);

  it('is followed by the same line', () => {
    row.at.forEach((flow, i) => {
      expect(Math.abs(valueAt(line, flow) - row.expected[i]!)).toBeLessThanOrEqual(row.tolerance);
    });
  });

  it('leaves the same residual', () => {
    const residual = Math.hypot(
      ...row.flows.map((flow, i) => valueAt(line, flow) - row.pressures[i]!),
    );
    expect(Math.abs(residual - row.expectedResidual)).toBeLessThanOrEqual(row.tolerance);
  });

  it('is described by the same figures', () => {
    const points = row.flows.map((flow, i) => ({ flow, pressure: row.pressures[i]! }));
    const fit = { kind: 'smooth', ...(row.pieces && { pieces: row.pieces }) } as const;
    const quality = fitQuality({ points, fit });
    // R² of 1 − 1e-3 and the line good to 1e-5: eight places less the last.
    expect(quality.rSquared).toBeCloseTo(row.expectedRSquared, 7);
    expect(Math.abs(quality.rms - row.expectedRms)).toBeLessThanOrEqual(row.tolerance);
    expect(quality.largest.index).toBe(row.expectedLargest);
    const difference = quality.largest.residual - row.expectedLargestResidual;
    expect(Math.abs(difference)).toBeLessThanOrEqual(row.tolerance);
  });
});
