// Least squares by reflections: a tall system is folded into a small triangle of the same answer.
// A matrix is a list of its columns.
// Sources:
// 1. A. S. Householder, "Unitary triangularization of a nonsymmetric matrix", J. ACM 5 (1958) 339-342.
// 2. G. H. Golub, C. F. Van Loan, Matrix Computations, ch. 5 (from memory, unverified).

/** A pivot this small beside its own column is rounding, and the column depends on those before it. */
const DEPENDENT = 1e-11;

/** A system `columns · x ≈ target` in few rows. */
export interface SmallSystem {
  /** One a variable; each as long as there are variables. */
  readonly columns: readonly Float64Array[];
  readonly target: Float64Array;
  /** What no choice of variables can take away, as a sum of squares. */
  readonly rest: number;
}

/**
 * Folds a system of many rows into one with as many rows as variables. For every x, the sum of
 * squares of `columns · x − target` is the same as before, less `rest`.
 *
 * @param columns - one a variable, all as long as the target, shape (variables)(rows) [-]
 * @param target - what they should add up to, shape (rows) [-]
 * @returns the small system, columns of shape (variables)(variables), in arrays of its own
 * @throws RangeError if the lengths differ or a number is not finite
 * @example
 * fold([[1, 1]], [1, 3]).rest; // => 2
 */
export function fold(
  columns: readonly ArrayLike<number>[],
  target: ArrayLike<number>,
): SmallSystem {
  const count = columns.length;
  const matrix = columns.map((column) => copyOf(column, Math.max(count, target.length)));
  const right = copyOf(target, Math.max(count, target.length));
  for (const column of columns) {
    if (column.length === target.length) continue;
    throw new RangeError(`A column of ${column.length} can't go with ${target.length} rows.`);
  }
  reflect(matrix, right, count);
  return {
    columns: matrix.map((column) => column.slice(0, count)),
    target: right.slice(0, count),
    rest: right.slice(count).reduce((sum, value) => sum + value * value, 0),
  };
}

/**
 * The x that brings `columns · x` closest to the target, where there is only one.
 *
 * @param columns - one a variable, all as long as the target, shape (variables)(rows) [-]
 * @param target - shape (rows) [-]
 * @returns x, shape (variables) [-]; undefined where a column depends on those before it
 * @throws RangeError if the lengths differ or a number is not finite
 * @example
 * solveLeastSquares([[1, 1]], [1, 3])[0]; // => 2
 */
export function solveLeastSquares(
  columns: readonly ArrayLike<number>[],
  target: ArrayLike<number>,
): Float64Array | undefined {
  const { columns: triangle, target: right } = fold(columns, target);
  const x = new Float64Array(columns.length);
  for (let i = columns.length - 1; i >= 0; i--) {
    const pivot = at(triangle[i]!, i);
    if (Math.abs(pivot) <= DEPENDENT * norm(columns[i]!)) return undefined;
    let sum = at(right, i);
    for (let j = i + 1; j < columns.length; j++) sum -= at(triangle[j]!, i) * at(x, j);
    x[i] = sum / pivot;
  }
  return x;
}

/** Makes the matrix upper triangular, one reflection a column, and takes the target along. */
function reflect(matrix: readonly Float64Array[], target: Float64Array, count: number): void {
  for (let k = 0; k < count; k++) {
    const pivotColumn = matrix[k]!;
    const mirror = pivotColumn.slice(k);
    const length = norm(mirror);
    if (length === 0) continue;
    mirror[0] = at(mirror, 0) + (at(mirror, 0) < 0 ? -length : length);
    const scale = 2 / mirror.reduce((sum, value) => sum + value * value, 0);
    for (const column of [...matrix.slice(k), target]) mirrorTail(column, mirror, scale);
    pivotColumn.fill(0, k + 1);
  }
}

function mirrorTail(column: Float64Array, mirror: Float64Array, scale: number): void {
  const start = column.length - mirror.length;
  let product = 0;
  for (let i = 0; i < mirror.length; i++) product += at(mirror, i) * at(column, start + i);
  for (let i = 0; i < mirror.length; i++) {
    column[start + i] = at(column, start + i) - scale * product * at(mirror, i);
  }
}

function norm(column: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < column.length; i++) sum += at(column, i) ** 2;
  return Math.sqrt(sum);
}

function copyOf(values: ArrayLike<number>, length: number): Float64Array {
  const copy = new Float64Array(length);
  for (let i = 0; i < values.length; i++) {
    if (!Number.isFinite(at(values, i))) throw new RangeError(`${values[i]} is not a number.`);
    copy[i] = at(values, i);
  }
  return copy;
}

function at(array: ArrayLike<number>, index: number): number {
  return array[index] as number;
}
