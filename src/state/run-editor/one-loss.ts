// The loss coefficient of one fitting as a number to show: friction in it is taken at a stated speed.

import type { Air } from '../../air/air.ts';
import type { Coefficient } from '../../duct/coefficient.ts';
import { colebrook } from '../../duct/colebrook.ts';
import type { PipeNumbers } from '../../shop/pipe-of.ts';

/**
 * A coefficient as one number.
 *
 * @param coefficient - part fixed, part growing with friction [-]
 * @param pipe - diameter [m] and roughness [m] of the pipe it is in
 * @param air - density [kg/m³] and viscosity [Pa·s]
 * @param velocity - mean speed in the pipe, above 0 [m/s]
 * @returns the coefficient at that speed [-]
 */
export function coefficientAt(
  coefficient: Coefficient,
  pipe: PipeNumbers,
  air: Air,
  velocity: number,
): number {
  if (coefficient.frictional === 0) return coefficient.fixed;
  const reynolds = (air.density * velocity * pipe.diameter) / air.viscosity;
  const factor = colebrook.factor(reynolds, pipe.roughness / pipe.diameter);
  return coefficient.fixed + coefficient.frictional * factor;
}
