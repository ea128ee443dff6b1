// Quantiles of a sample.
//
// 1. R. J. Hyndman, Y. Fan, The American Statistician 50 (1996) 361–365, definition 7: straight lines
//    between the values in order.

/**
 * A quantile of a sample.
 *
 * @param sorted - the values by rising size, at least one, any unit [-]
 * @param part - which quantile, 0 to 1: 0.5 is the median [-]
 * @returns the value below which that part lies, in the unit of the values [-]
 * @throws RangeError for an empty sample or a part outside 0 to 1
 * @example
 * quantile([1, 2, 3, 10], 0.5); // => 2.5
 * quantile([1, 2, 3, 10], 0.9); // => 7.9
 */
export function quantile(sorted: ArrayLike<number>, part: number): number {
  if (!(part >= 0 && part <= 1)) throw new RangeError(`a quantile is from 0 to 1, not ${part}`);
  if (sorted.length === 0) throw new RangeError('a sample of nothing has no quantile');
  const place = part * (sorted.length - 1);
  const below = Math.floor(place);
  const low = sorted[below]!;
  const high = sorted[Math.min(below + 1, sorted.length - 1)]!;
  return low + (place - below) * (high - low);
}
