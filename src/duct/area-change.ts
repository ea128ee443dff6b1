// A change of diameter between two pipes in a row, stepped or conical, either way.
//
// 1. J.-C. Borda (1766), L. Carnot (1803): a sudden expansion loses (1 − A₁/A₂)².
// 2. Crane, Technical Paper 410, Appendix A: a sudden contraction loses 0.5·(1 − A₂/A₁); a cone of
//    total angle θ to 45° loses 2.6·sin(θ/2) of the expansion, 1.6·sin(θ/2) of the contraction.
// Wider cones carry the same factor on until it reaches 1, at 45.2° and 77.4°, so that there is no
// jump at 45° and no cone loses more than a step. That is an upper bound, not a measurement.

import { type Coefficient, plainCoefficient } from './coefficient.ts';

/** How the diameter changes. The angle is that between opposite sides of the cone [rad]. */
export type Transition =
  | { readonly kind: 'taper'; readonly angle: number }
  | { readonly kind: 'sudden' }
  | { readonly kind: 'plain'; readonly coefficient: number };

/** The cone that is put in where nothing is said: 30° between opposite sides. */
export const USUAL_TAPER: Transition = { kind: 'taper', angle: Math.PI / 6 };

/**
 * A change of diameter, **on the velocity pressure of the smaller pipe**. Zero where the diameters
 * are equal, save a plain coefficient, which is as given. Continuous in both diameters and in the
 * angle.
 *
 * @param fromDiameter - inside diameter the air comes from, above 0 [m]
 * @param toDiameter - inside diameter the air goes to, above 0 [m]
 * @param transition - a taper by its angle, 0 to π [rad], a step, or a plain coefficient [-]
 * @returns coefficient, fixed only [-]
 * @throws RangeError if an argument is outside its range
 * @example
 * areaChange(0.1, 0.15, { kind: 'sudden' }).fixed; // => 0.3086
 * areaChange(0.15, 0.1, { kind: 'sudden' }).fixed; // => 0.2778
 */
export function areaChange(
  fromDiameter: number,
  toDiameter: number,
  transition: Transition,
): Coefficient {
  if (!(fromDiameter > 0)) throw new RangeError(`diameter must be above 0, not ${fromDiameter}`);
  if (!(toDiameter > 0)) throw new RangeError(`diameter must be above 0, not ${toDiameter}`);
  if (transition.kind === 'plain') return plainCoefficient(transition.coefficient);
  const widens = toDiameter > fromDiameter;
  const ratio = widens ? fromDiameter / toDiameter : toDiameter / fromDiameter;
  const narrowing = 1 - ratio * ratio;
  const sudden = widens ? narrowing * narrowing : 0.5 * narrowing;
  if (transition.kind === 'sudden') return plainCoefficient(sudden);
  return plainCoefficient(sudden * coneFactor(transition.angle, widens ? 2.6 : 1.6));
}

function coneFactor(angle: number, crane: number): number {
  if (!(angle >= 0 && angle <= Math.PI)) {
    throw new RangeError(`a cone's angle must be 0 to π, not ${angle}`);
  }
  return Math.min(1, crane * Math.sin(angle / 2));
}
