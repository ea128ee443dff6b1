// Tables over the square root of suction, on an even grid from nothing up: what a duct draws is
// almost a straight line there, so a cubic through four neighbours reads it to six digits and more.

/** Grid points from head 0 [Pa^½] on. */
export const GRID_POINTS = 48;

/** An even grid of heads, `step` apart [Pa^½]. */
export interface HeadGrid {
  readonly step: number;
}

/** Room above the strongest suction: the head of a wye holds velocity pressure as well [-]. */
const HEADROOM = 1.2;

/**
 * The grid that holds every suction up to the strongest.
 * @param strongest - greatest suction of any collector in the study, above 0 [Pa]
 * @returns the grid, with room above
 * @throws RangeError when `strongest` is not above 0
 * @example
 * headGridUpTo(3600).step > 60 / 47; // => true
 */
export function headGridUpTo(strongest: number): HeadGrid {
  if (!(strongest > 0)) throw new RangeError(`the strongest suction must be above 0: ${strongest}`);
  return { step: (HEADROOM * Math.sqrt(strongest)) / (GRID_POINTS - 1) };
}

/** Where on the grid a head lies, and what the four points around it count there. */
export interface GridReading {
  /** The first of the four points. */
  point: number;
  /** What each of them counts for the value [-], and for the slope per grid step [-], shape (4). */
  readonly weights: Float64Array;
  readonly slopeWeights: Float64Array;
}

/**
 * Makes a reading to be moved along the grid.
 * @returns a reading, at no head yet
 */
export function gridReading(): GridReading {
  return { point: 0, weights: new Float64Array(4), slopeWeights: new Float64Array(4) };
}

/**
 * Moves a reading to a head, by the cubic through the four points around it (Lagrange).
 * @param reading - the reading, moved
 * @param x - head over the grid's step, 0 or more [-]
 */
export function moveReading(reading: GridReading, x: number): void {
  const whole = x | 0;
  const k = whole < 1 ? 1 : whole > GRID_POINTS - 3 ? GRID_POINTS - 3 : whole;
  const t = x - k;
  const { weights, slopeWeights } = reading;
  reading.point = k - 1;
  weights[0] = (-t * (t - 1) * (t - 2)) / 6;
  weights[1] = ((t + 1) * (t - 1) * (t - 2)) / 2;
  weights[2] = (-(t + 1) * t * (t - 2)) / 2;
  weights[3] = ((t + 1) * t * (t - 1)) / 6;
  slopeWeights[0] = (-3 * t * t + 6 * t - 2) / 6;
  slopeWeights[1] = (3 * t * t - 4 * t - 1) / 2;
  slopeWeights[2] = (-3 * t * t + 2 * t + 2) / 2;
  slopeWeights[3] = (3 * t * t - 1) / 6;
}

/**
 * Reads a table where a reading is.
 * @param table - one value a grid point, any unit [-], shape (GRID_POINTS)
 * @param reading - the reading; its `weights` give the value, its `slopeWeights` the slope
 * @param weights - one of the two [-], shape (4)
 * @returns value in the table's unit, or slope in that unit a grid step [-]
 */
export function readTable(
  table: Float64Array,
  reading: GridReading,
  weights: Float64Array,
): number {
  const k = reading.point;
  return (
    weights[0]! * table[k]! +
    weights[1]! * table[k + 1]! +
    weights[2]! * table[k + 2]! +
    weights[3]! * table[k + 3]!
  );
}

/**
 * Carries a table from uneven heads to the grid, by cubics with three-point slopes.
 * @param heads - rising heads from 0 on, over the grid's step [-], shape (GRID_POINTS)
 * @param values - value at each of them, any unit [-], shape (GRID_POINTS)
 * @param onto - receives the value at each grid point [-], shape (GRID_POINTS)
 */
export function regrid(heads: Float64Array, values: Float64Array, onto: Float64Array): void {
  let k = 0;
  for (let m = 0; m < GRID_POINTS; m++) {
    while (k < GRID_POINTS - 2 && heads[k + 1]! < m) k++;
    const width = heads[k + 1]! - heads[k]!;
    const chord = (values[k + 1]! - values[k]!) / width;
    const left = slopeThrough(heads, values, k);
    const right = slopeThrough(heads, values, k + 1);
    const t = (m - heads[k]!) / width;
    const twist = left + right - 2 * chord;
    onto[m] = values[k]! + width * t * (left + t * (chord - left - twist + t * twist));
  }
}

/** Slope at a point of the parabola through it and its neighbours. */
function slopeThrough(heads: Float64Array, values: Float64Array, point: number): number {
  const k = point < 1 ? 1 : point > GRID_POINTS - 2 ? GRID_POINTS - 2 : point;
  const before = heads[k]! - heads[k - 1]!;
  const after = heads[k + 1]! - heads[k]!;
  const rising = (values[k + 1]! - values[k]!) / after;
  const falling = (values[k]! - values[k - 1]!) / before;
  const curl = (rising - falling) / (before + after);
  return falling + curl * (2 * heads[point]! - heads[k]! - heads[k - 1]!);
}

/** Numbers of a table in {@link cubicsOf} for each step of the grid [-]. */
export const CUBIC_LENGTH = 4;

/**
 * The cubics that {@link moveReading} reads a table by, as coefficients, for loops that read one table
 * very often: between point k and the next the value is c₀ + t·(c₁ + t·(c₂ + t·c₃)), t from 0 to 1.
 * @param table - one value a grid point, any unit [-], shape (GRID_POINTS)
 * @param cubics - receives the coefficients in the table's unit [-], shape (GRID_POINTS · 4)
 */
export function cubicsOf(table: Float64Array, cubics: Float64Array): void {
  for (let k = 0; k < GRID_POINTS; k++) {
    const middle = k < 1 ? 1 : k > GRID_POINTS - 3 ? GRID_POINTS - 3 : k;
    const y0 = table[middle - 1]!;
    const y1 = table[middle]!;
    const y2 = table[middle + 1]!;
    const y3 = table[middle + 2]!;
    const a1 = (-2 * y0 - 3 * y1 + 6 * y2 - y3) / 6;
    const a2 = (y0 - 2 * y1 + y2) / 2;
    const a3 = (-y0 + 3 * y1 - 3 * y2 + y3) / 6;
    // Moved from the middle point to point k, which differ at both ends of the grid.
    const s = k - middle;
    cubics[4 * k] = y1 + s * (a1 + s * (a2 + s * a3));
    cubics[4 * k + 1] = a1 + s * (2 * a2 + 3 * s * a3);
    cubics[4 * k + 2] = a2 + 3 * s * a3;
    cubics[4 * k + 3] = a3;
  }
}
