// The friction of the industrial-ventilation worksheets, kept for comparison with our own law.
// Colebrook at 0.09 mm lies 11 % below it: its duct is rougher, neither is in error.
//
// 1. ACGIH, Industrial Ventilation: H_f = 0.0307·V^0.533/Q^0.612 velocity pressures a foot, for
//    galvanised duct, V in ft/min and Q in cfm.

const FOOT = 0.3048;
const FOOT_PER_MINUTE = 0.00508;
const CUBIC_FOOT_PER_MINUTE = 4.719474432e-4;

/**
 * Velocity pressures lost along a metre of galvanised duct, by the worksheets' fit.
 *
 * @param velocity - mean speed, above 0 [m/s]
 * @param flow - above 0 [m³/s]
 * @returns friction, in velocity pressures per metre [1/m]
 * @throws RangeError if an argument is not above 0
 * @example
 * worksheetFriction(20, 0.2); // => 0.2049
 */
export function worksheetFriction(velocity: number, flow: number): number {
  if (!(velocity > 0)) throw new RangeError(`velocity must be above 0, not ${velocity}`);
  if (!(flow > 0)) throw new RangeError(`flow must be above 0, not ${flow}`);
  const speed = velocity / FOOT_PER_MINUTE;
  const volume = flow / CUBIC_FOOT_PER_MINUTE;
  return (0.0307 * speed ** 0.533) / volume ** 0.612 / FOOT;
}
