import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fold, solveLeastSquares } from '../../../src/math/least-squares.ts';
import { solveNonNegative } from '../../../src/math/non-negative-least-squares.ts';

const entry = fc.integer({ min: -9, max: 9 });
const column = fc.array(entry, { minLength: 8, maxLength: 8 });
const system = fc.record({
  columns: fc.array(column, { minLength: 1, maxLength: 6 }),
  target: column,
});
const gap = (
  columns: readonly ArrayLike<number>[],
  target: ArrayLike<number>,
  x: ArrayLike<number>,
) =>
  Array.from(target).map((value, row) =>
    columns.reduce((sum, each, i) => sum - each[row]! * x[i]!, value),
  );
const squares = (values: readonly number[]) => values.reduce((sum, value) => sum + value ** 2, 0);

describe('fold', () => {
  it('keeps the sum of squares for every x', () => {
    fc.assert(
      fc.property(
        system,
        fc.array(entry, { minLength: 6, maxLength: 6 }),
        ({ columns, target }, x) => {
          const small = fold(columns, target);
          const kept = squares(gap(small.columns, small.target, x)) + small.rest;
          expect(kept).toBeCloseTo(squares(gap(columns, target, x)), 6);
        },
      ),
    );
  });

  it('has a triangle of as many rows as variables, also for fewer equations', () => {
    const { columns, rest } = fold([[2], [3]], [6]);
    expect(columns.map((each) => each.length)).toEqual([2, 2]);
    expect(columns[0]![1]).toBe(0);
    expect(rest).toBe(0);
  });

  it('refuses uneven columns and numbers that are none', () => {
    expect(() => fold([[1, 2], [1]], [1, 2])).toThrow('1 can');
    expect(() => fold([[1, Number.NaN]], [1, 2])).toThrow('NaN');
  });
});

describe('solveLeastSquares', () => {
  it('leaves a gap at right angles to every column', () => {
    fc.assert(
      fc.property(system, ({ columns, target }) => {
        const x = solveLeastSquares(columns, target);
        fc.pre(x !== undefined);
        const left = gap(columns, target, x);
        for (const each of columns) {
          expect(
            Math.abs(each.reduce((sum, value, row) => sum + value * left[row]!, 0)),
          ).toBeLessThan(1e-6);
        }
      }),
    );
  });

  it('says so where a column depends on the others', () => {
    const columns = [
      [1, 2, 3],
      [2, 4, 6],
    ];
    expect(solveLeastSquares(columns, [1, 0, 0])).toBeUndefined();
  });
});

describe('solveNonNegative', () => {
  it('cannot be bettered: the conditions of Karush, Kuhn and Tucker hold', () => {
    fc.assert(
      fc.property(system, ({ columns, target }) => {
        const x = solveNonNegative(columns, target, 0);
        const left = gap(columns, target, x);
        columns.forEach((each, i) => {
          const gain = each.reduce((sum, value, row) => sum + value * left[row]!, 0);
          expect(x[i]).toBeGreaterThanOrEqual(0);
          expect(gain).toBeLessThan(1e-6);
          if (x[i]! > 0) expect(Math.abs(gain)).toBeLessThan(1e-6);
        });
      }),
      { numRuns: 500 },
    );
  });

  it('ends with columns that repeat one another', () => {
    const twin = [1, 2, 3];
    const x = solveNonNegative([twin, twin, [1, 0, 0]], [2, 4, 6], 0);
    expect(x[0]! + x[1]!).toBeCloseTo(2, 12);
  });

  it('refuses free columns that depend on one another', () => {
    expect(() =>
      solveNonNegative(
        [
          [1, 1],
          [2, 2],
        ],
        [1, 0],
        2,
      ),
    ).toThrow('2 free columns');
  });
});
