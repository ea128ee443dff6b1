// A mitred bend: two pipes cut and joined at an angle, no radius at all.
//
// 1. D. C. Rennels and H. M. Hudson, Pipe Flow: A Practical and Comprehensive Guide (2012), ch. 15:
//    K = 0.42·sin(α/2) + 2.56·sin³(α/2).

import { type Coefficient, plainCoefficient } from './coefficient.ts';

/**
 * A single mitre on its pipe's velocity pressure. Rises with the angle. Its values at 45° and 90°
 * are verified; beyond 90° the formula is carried on, from memory, unverified.
 *
 * @param angle - turn, 0 to 2π/3 [rad]
 * @returns coefficient, fixed only [-]
 * @throws RangeError if the angle is outside its range
 * @example
 * mitreBend(Math.PI / 2).fixed; // => 1.2021
 */
export function mitreBend(angle: number): Coefficient {
  if (!(angle >= 0 && angle <= (2 / 3) * Math.PI + 1e-12)) {
    throw new RangeError(`a mitre's angle must be 0 to 2π/3, not ${angle}`);
  }
  const half = Math.sin(angle / 2);
  return plainCoefficient(0.42 * half + 2.56 * half ** 3);
}
