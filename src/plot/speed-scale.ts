// The scale that a drop's speed is read on, with the carrying range marked.
// It starts at 0 and its end stays put; a speed past the end is pinned there and says so.

/** The carrying range, or another stretch of speeds [m/s]. */
export interface SpeedRange {
  readonly low: number;
  readonly high: number;
}

/** Where things stand on a speed scale, from its left end [px]. */
export interface SpeedScale {
  readonly rangeStart: number;
  readonly rangeEnd: number;
  /** Speed at its end [m/s] */
  readonly end: number;
  /** Place of a speed [m/s], never outside the scale [px]. */
  readonly at: (speed: number) => number;
  /** Whether a speed [m/s] lies past the end. */
  readonly isPastEnd: (speed: number) => boolean;
}

/** The scale ends this far past the top of the range, about 6,300 ft/min with the usual one [-]. */
const END_OVER_HIGH = 1.4;

/**
 * Rules a speed scale.
 *
 * @param width - its length on the page, above 0 [px]
 * @param range - the carrying range, 0 < low < high [m/s]
 * @returns the scale
 * @throws RangeError if the width is not above 0 or the range is not rising
 * @example
 * speedScale(140, { low: 5, high: 10 }).rangeStart; // => 50
 * speedScale(140, { low: 5, high: 10 }).at(40); // => 140
 */
export function speedScale(width: number, range: SpeedRange): SpeedScale {
  if (!(width > 0)) throw new RangeError(`a scale's width must be above 0, not ${width}`);
  if (!(range.low > 0 && range.high > range.low)) {
    throw new RangeError(`a range must rise from above 0, not ${range.low} to ${range.high}`);
  }
  const end = END_OVER_HIGH * range.high;
  const scale = (speed: number) => (width * Math.min(speed, end)) / end;
  return {
    rangeStart: scale(range.low),
    rangeEnd: scale(range.high),
    end,
    at: (speed) => scale(Math.abs(speed)),
    isPastEnd: (speed) => Math.abs(speed) > end,
  };
}
