// Pressure of the air at a height above the sea, as the standard atmosphere has it.
// The weather moves it by some 3 % either way, which the density follows.
//
// Source: ASHRAE Handbook of Fundamentals (2017), chapter 1, equation 3.

/**
 * Pressure of the standard atmosphere, p = 101325·(1 − 2.25577e-5·Z)^5.2559. Falls with height.
 * @param altitude - height above the sea, −5000 to 11000 [m]
 * @returns absolute pressure [Pa]
 * @throws RangeError outside that range
 * @example pressureAtAltitude(0); // => 101325
 * @example pressureAtAltitude(1500); // => 84556
 */
export function pressureAtAltitude(altitude: number): number {
  if (!(altitude >= -5000 && altitude <= 11000)) {
    throw new RangeError(`height above the sea must be −5000 to 11000 m, not ${altitude}`);
  }
  return 101325 * (1 - 2.25577e-5 * altitude) ** 5.2559;
}
