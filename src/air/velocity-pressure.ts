// The pressure that moving air would give if it were stopped, and the way back from it.
//
// Sources:
//  1. ANSI/AMCA 210: standard air 0.075 lb/ft³.

/** Standard air of American fan practice, 0.075 lb/ft³ [kg/m³]. */
export const STANDARD_DENSITY = 1.201385;

/**
 * Velocity pressure, ½ρV². Even in the velocity.
 * @param density - density of the air, 0 or more [kg/m³]
 * @param velocity - mean velocity [m/s]
 * @returns velocity pressure, 0 or more [Pa]
 * @example velocityPressure(1.2, 20); // => 240
 */
export function velocityPressure(density: number, velocity: number): number {
  return 0.5 * density * velocity * velocity;
}

/**
 * The velocity that has a given velocity pressure, √(2p/ρ).
 * @param density - density of the air, above 0 [kg/m³]
 * @param pressure - velocity pressure, 0 or more [Pa]
 * @returns velocity, 0 or more [m/s]
 * @throws RangeError if the density or the pressure is out of range
 * @example velocityOfPressure(1.2, 240); // => 20
 */
export function velocityOfPressure(density: number, pressure: number): number {
  if (!(density > 0)) {
    throw new RangeError(`density must be above 0, not ${density}`);
  }
  if (!(pressure >= 0)) {
    throw new RangeError(`velocity pressure must be 0 or more, not ${pressure}`);
  }
  return Math.sqrt((2 * pressure) / density);
}
