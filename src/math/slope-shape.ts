// The shapes that a falling line may have, as sums of parts that count zero or more. A part is a set
// of slopes, one a knot; between knots the slope is straight.

/** A family of slopes: `free` parts of any sign, then parts that count zero or more. */
export interface SlopeShape {
  readonly free: number;
  /** One slope a knot, shape (parts)(knots). */
  readonly parts: readonly Float64Array[];
}

/**
 * All shapes over a number of knots, the plainest first:
 *
 * - bending down throughout (with one peak, or none)
 * - bending down to a knot, then up, and falling at the end
 * - bending up to a knot, then down, falling all the way
 *
 * @param knots - how many knots, 2 or more [-]
 * @returns the shapes; together they hold every line that rises to one peak at most, falls beyond it
 *   and changes its bend at one knot at most [-]
 * @example
 * slopeShapes(3).length; // => 4
 */
export function slopeShapes(knots: number): SlopeShape[] {
  const inner = Array.from({ length: knots - 2 }, (_, i) => i + 1);
  return [
    { ...downThenUp(knots, knots - 1), free: 1 },
    ...inner.map((turn) => downThenUp(knots, turn)),
    downThenUp(knots, 0),
    ...inner.map((turn) => upThenDown(knots, turn)),
  ];
}

/** The slope at the end, then what each knot to its left has more (before the turn) or less. */
function downThenUp(knots: number, turn: number): SlopeShape {
  const steps = stepsBefore(knots).map((step, i) => (i < turn ? step : step.map(opposite)));
  return { free: 0, parts: [new Float64Array(knots).fill(-1), ...steps] };
}

/** The slope at the turn, which is the least steep, then what is steeper on both sides of it. */
function upThenDown(knots: number, turn: number): SlopeShape {
  const steps = stepsBefore(knots).map((step, i) =>
    i < turn ? step.map(opposite) : step.map((value) => value - 1),
  );
  return { free: 0, parts: [new Float64Array(knots).fill(-1), ...steps] };
}

/** For each gap between knots: 1 at the knots before it, 0 at those after. */
function stepsBefore(knots: number): Float64Array[] {
  return Array.from({ length: knots - 1 }, (_, gap) => new Float64Array(knots).fill(1, 0, gap + 1));
}

function opposite(value: number): number {
  return -value;
}
