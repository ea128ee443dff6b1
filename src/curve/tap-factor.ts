// From what a pressure tap shows to total suction.
// A tap in an inlet pipe reads the static suction: the total suction plus the velocity pressure.

import type { CurveData } from './curve-data.ts';
import { velocityPressureFactor } from './velocity-pressure-factor.ts';

/**
 * What must be taken off the entered pressures to make total suction of them, per flow squared:
 * H = |SP| − ½ρV² for suction read at a tap. Worth about 1 in. w.g. at 4,000 ft/min.
 *
 * Nothing is taken off a fan static pressure: FSP = SP at the outlet − TP at the inlet, and with
 * an open outlet the first is zero, so FSP is the total suction already. Nor off a total suction.
 *
 * @param curve - the entered curve; the air is that of its test
 * @returns velocity pressure at the tap over flow squared [Pa/(m³/s)²], 0 without a tap
 * @throws RangeError if the tap's diameter or the density is not above zero
 */
export function tapFactor(curve: CurveData): number {
  return curve.basis.kind === 'tap'
    ? velocityPressureFactor(curve.density, curve.basis.diameter)
    : 0;
}
