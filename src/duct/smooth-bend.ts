// A smooth bend: friction along it, and what the swirl costs.
//
// 1. D. C. Rennels and H. M. Hudson, Pipe Flow: A Practical and Comprehensive Guide (2012), ch. 15:
//    K = f·α·r + (0.10 + 2.4·f)·sin(α/2) + 6.6·f·(√sin(α/2) + sin(α/2))/r^(4α/π).

import type { Coefficient } from './coefficient.ts';

/**
 * A smooth bend on its pipe's velocity pressure, the friction along its centre line included.
 * Falls to 0 with the angle.
 *
 * @param angle - turn, 0 to π [rad]
 * @param radius - radius of the centre line over inside diameter, 0.5 or more [-]
 * @returns coefficient, part fixed and part frictional [-]
 * @throws RangeError if an argument is outside its range
 * @example
 * smoothBend(Math.PI / 2, 1.5).fixed; // => 0.07071
 * smoothBend(Math.PI / 2, 1.5).frictional; // => 8.594
 */
export function smoothBend(angle: number, radius: number): Coefficient {
  if (!(angle >= 0 && angle <= Math.PI)) {
    throw new RangeError(`a bend's angle must be 0 to π, not ${angle}`);
  }
  if (!(radius >= 0.5)) throw new RangeError(`radius must be 0.5 or more, not ${radius}`);
  const half = Math.sin(angle / 2);
  const swirl = (6.6 * (Math.sqrt(half) + half)) / radius ** ((4 * angle) / Math.PI);
  return { fixed: 0.1 * half, frictional: angle * radius + 2.4 * half + swirl };
}
