// Where a smoothed line is pieced together: so that each piece has about as many readings to go by.

/** Places closer than this part of the whole are one place, for counting them. */
const ONE_PLACE = 0.01;
/** Most pieces where nobody asked for a number. */
const USUAL = 4;

/**
 * Knots for a line through scattered places.
 *
 * With n clearly different places, at most n − 2 pieces (n − 1 over 2 and no more than 4 where
 * nobody asks), so that the line never has more freedom than the places.
 *
 * @param x - the places, finite, in any order [-]
 * @param pieces - most pieces, a whole number from 1; left out: as above [-]
 * @returns knots, strictly rising from the lowest to the highest place, shape (pieces + 1) [-]
 * @throws RangeError for fewer than two different places, a number that is not finite, or a number
 *   of pieces that is not a whole number above zero
 * @example
 * fitKnots([0, 1, 2, 3, 4, 5, 6, 7, 8], 2)[1]; // => 4
 */
export function fitKnots(x: ArrayLike<number>, pieces?: number): Float64Array {
  const sorted = Float64Array.from(x).toSorted();
  for (const place of sorted) {
    if (!Number.isFinite(place)) throw new RangeError(`${place} is not a place on a line.`);
  }
  const first = sorted[0] ?? 0;
  const last = sorted[sorted.length - 1] ?? 0;
  if (!(last > first)) {
    throw new RangeError(
      `A line needs two different places; there are ${sorted.length} at ${first}.`,
    );
  }
  const places = clearlyDifferent(sorted, ONE_PLACE * (last - first));
  const count = Math.min(wanted(pieces, places.length), Math.max(1, places.length - 2));
  const knots = Float64Array.from({ length: count + 1 }, (_, i) => {
    const rank = (i * (places.length - 1)) / count;
    const below = places[Math.floor(rank)]!;
    const above = places[Math.ceil(rank)]!;
    return below + (rank - Math.floor(rank)) * (above - below);
  });
  knots[0] = first;
  knots[count] = last;
  return knots;
}

function wanted(pieces: number | undefined, places: number): number {
  if (pieces === undefined) return Math.min(USUAL, Math.max(1, Math.floor((places - 1) / 2)));
  if (Number.isInteger(pieces) && pieces > 0) return pieces;
  throw new RangeError(`The number of pieces must be a whole number from 1, not ${pieces}.`);
}

/** One place for each cluster: its lowest. The highest of all is kept as it is. */
function clearlyDifferent(sorted: Float64Array, apart: number): number[] {
  const places: number[] = [];
  for (const place of sorted) {
    const before = places[places.length - 1];
    if (before === undefined || place - before > apart) places.push(place);
  }
  return places;
}
