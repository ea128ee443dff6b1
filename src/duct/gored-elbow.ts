// A gored elbow: a sheet-metal elbow of three, four or five pieces.
//
// 1. Velocity-pressure worksheets after ACGIH, Industrial Ventilation, and ASHRAE Fundamentals
//    CD3-12; shared/fittings.json says which number is from which.
// 2. The same worksheets: 60°, 45° and 30° cost 2/3, 1/2 and 1/3 of 90°, so in proportion.

import fittings from '../../shared/fittings.json' with { type: 'json' };
import { type Coefficient, plainCoefficient } from './coefficient.ts';

const TIGHT = 1;
const LONG = 1.5;

/**
 * A gored elbow on its pipe's velocity pressure. Between the two tabulated radii a straight line.
 *
 * @param pieces - of the whole 90° elbow of this make, 3, 4 or 5 [-]
 * @param radius - radius of the centre line over inside diameter, 1 to 1.5 [-]
 * @param angle - turn, 0 to π/2 [rad]
 * @returns coefficient, fixed only [-]
 * @throws RangeError if an argument is outside its range
 * @example
 * goredElbow(3, 1, Math.PI / 2).fixed; // => 0.42
 * goredElbow(3, 1, Math.PI / 4).fixed; // => 0.21
 */
export function goredElbow(pieces: 3 | 4 | 5, radius: number, angle: number): Coefficient {
  if (!(radius >= TIGHT && radius <= LONG)) {
    throw new RangeError(`a gored elbow's radius must be 1 to 1.5, not ${radius}`);
  }
  if (!(angle >= 0 && angle <= Math.PI / 2)) {
    throw new RangeError(`a gored elbow's angle must be 0 to π/2, not ${angle}`);
  }
  const tight = tabulated(pieces, TIGHT);
  const long = tabulated(pieces, LONG);
  const right = tight + ((radius - TIGHT) / (LONG - TIGHT)) * (long - tight);
  return plainCoefficient((right * angle) / (Math.PI / 2));
}

function tabulated(pieces: number, radius: number): number {
  const row = fittings.rows.find(
    (each) => each.kind === 'gored' && each.pieces === pieces && each.radius === radius,
  );
  if (row === undefined) throw new RangeError(`an elbow has 3, 4 or 5 pieces, not ${pieces}`);
  return row.coefficient;
}
