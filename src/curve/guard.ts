// Guards for numbers that come from outside the core: each returns what it was given, or throws.

/**
 * Insists on a number above zero.
 *
 * @param what - the name of the number, for the message
 * @param value - the number, in any unit [-]
 * @returns the same number, finite and above zero [-]
 * @throws RangeError otherwise, with the value
 * @example
 * positive('density', 1.2); // => 1.2
 */
export function positive(what: string, value: number): number {
  if (value > 0 && value < Number.POSITIVE_INFINITY) return value;
  throw new RangeError(`The ${what} must be a number above zero, not ${value}.`);
}

/**
 * Insists on a number that is zero or above.
 *
 * @param what - the name of the number, for the message
 * @param value - the number, in any unit [-]
 * @returns the same number, finite and not below zero [-]
 * @throws RangeError otherwise, with the value
 * @example
 * notNegative('loss coefficient', 0); // => 0
 */
export function notNegative(what: string, value: number): number {
  if (value >= 0 && value < Number.POSITIVE_INFINITY) return value;
  throw new RangeError(`The ${what} must be zero or more, not ${value}.`);
}
