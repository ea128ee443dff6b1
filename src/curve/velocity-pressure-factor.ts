// Velocity pressure in a round pipe, per square of the flow through it.
// A suction tap reads it on top of the total suction, and a separator loses a multiple of it.

import { velocityPressure } from '../air/velocity-pressure.ts';
import { positive } from './guard.ts';

/**
 * Velocity pressure over flow squared: ½ρ/A², A the area of the bore.
 *
 * @param density - air density [kg/m³]
 * @param diameter - inside diameter of the pipe [m]
 * @returns the factor [Pa/(m³/s)²]; times flow² it is the velocity pressure [Pa]
 * @throws RangeError unless both are above zero
 * @example
 * velocityPressureFactor(2, 2 / Math.sqrt(Math.PI)); // => 1
 */
export function velocityPressureFactor(density: number, diameter: number): number {
  const bore = (Math.PI / 4) * positive('diameter', diameter) ** 2;
  return velocityPressure(positive('density', density), 1 / bore);
}
