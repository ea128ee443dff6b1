// Straight pipe: friction along the wall, and nothing else.
//
// 1. J. Weisbach (1845): loss = f·(L/D)·VP, with the Darcy friction factor f.

import type { Coefficient } from './coefficient.ts';

/**
 * Straight pipe on its own velocity pressure: K = f·L/D.
 *
 * @param length - along the pipe, 0 or more [m]
 * @param diameter - inside diameter, above 0 [m]
 * @returns coefficient, frictional only [-]
 * @throws RangeError if an argument is outside its range
 * @example
 * straightPipe(8, 0.16).frictional; // => 50
 */
export function straightPipe(length: number, diameter: number): Coefficient {
  if (!(length >= 0)) throw new RangeError(`length must be 0 or more, not ${length}`);
  if (!(diameter > 0)) throw new RangeError(`diameter must be above 0, not ${diameter}`);
  return { fixed: 0, frictional: length / diameter };
}
