// A sequence of points that fills a cube evenly, so that few of them stand for all.
//
// 1. I. M. Sobol', USSR Comput. Math. Math. Phys. 7 (1967) 86–112: the sequence.
// 2. I. A. Antonov, V. M. Saleev (1979): in the order of the Gray code, one XOR a point.
// 3. S. Joe, F. Y. Kuo, SIAM J. Sci. Comput. 30 (2008) 2635–2654, "new-joe-kuo-6": the primitive
//    polynomials and first direction numbers of the table below.

/** Degree, coefficients of the polynomial between its ends, and first direction numbers. */
const DIRECTIONS: readonly (readonly [number, number, readonly number[]])[] = [
  [1, 0, [1]],
  [2, 1, [1, 3]],
  [3, 1, [1, 3, 1]],
  [3, 2, [1, 1, 1]],
  [4, 1, [1, 1, 3, 3]],
  [4, 4, [1, 3, 5, 13]],
  [5, 2, [1, 1, 5, 5, 17]],
];
/** Most dimensions that there are directions for. */
const MOST_DIMENSIONS = DIRECTIONS.length + 1;
const BITS = 32;

/**
 * The first points of the sequence. Any 2^k of them from the first on have, along each axis, exactly
 * one in each of 2^k even intervals, with or without a shift.
 *
 * @param count - how many points, 0 or more [-]
 * @param dimensions - numbers in each, 1 to 8 [-]
 * @param seed - 0 for the sequence as published; any other whole number shifts all points, digit by
 *   digit, by what follows from it alone [-]
 * @returns points, each of numbers from 0 to below 1 [-], shape (count, dimensions)
 * @throws RangeError for a number of dimensions that there are no directions for
 * @example
 * sobolPoints(3, 2, 0).map((point) => [...point]); // => [[0, 0], [0.5, 0.5], [0.75, 0.25]]
 */
export function sobolPoints(count: number, dimensions: number, seed: number): Float64Array[] {
  if (!(dimensions >= 1 && dimensions <= MOST_DIMENSIONS)) {
    throw new RangeError(`dimensions must be 1 to ${MOST_DIMENSIONS}, not ${dimensions}`);
  }
  const directions = Array.from({ length: dimensions }, (_, d) => directionNumbers(d));
  const shifts = shiftsFrom(seed, dimensions);
  const state = new Uint32Array(dimensions);
  const points: Float64Array[] = [];
  for (let n = 0; n < count; n++) {
    points.push(Float64Array.from(state, (x, d) => ((x ^ shifts[d]!) >>> 0) / 2 ** BITS));
    const lowestZero = 31 - Math.clz32(~n & (n + 1));
    directions.forEach((numbers, d) => {
      state[d]! ^= numbers[lowestZero]!;
    });
  }
  return points;
}

/** The direction numbers of one dimension; the first is van der Corput's. */
function directionNumbers(dimension: number): Uint32Array {
  const numbers = new Uint32Array(BITS);
  const entry = DIRECTIONS[dimension - 1];
  if (entry === undefined) return numbers.map((_, k) => 2 ** (BITS - 1 - k));
  const [degree, coefficients, first] = entry;
  for (let k = 0; k < BITS; k++) {
    if (k < degree) {
      numbers[k] = first[k]! * 2 ** (BITS - 1 - k);
      continue;
    }
    let number = numbers[k - degree]! ^ (numbers[k - degree]! >>> degree);
    for (let i = 1; i < degree; i++) {
      if ((coefficients >> (degree - 1 - i)) & 1) number ^= numbers[k - i]!;
    }
    numbers[k] = number;
  }
  return numbers;
}

/** One number a dimension from a seed (the mixing of mulberry32, public domain); 0 from seed 0. */
function shiftsFrom(seed: number, dimensions: number): Uint32Array {
  const shifts = new Uint32Array(dimensions);
  if (seed === 0) return shifts;
  let state = seed >>> 0;
  return shifts.map(() => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return (t ^ (t >>> 14)) >>> 0;
  });
}
