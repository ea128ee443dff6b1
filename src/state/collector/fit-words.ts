// How well the line follows the points, in words.

import { fitQuality } from '../../curve/fit-quality.ts';
import type { Curve } from '../../shop/schema/curve-schema.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';

/**
 * The fit of a curve.
 *
 * @param curve - with two used points at least
 * @param units - the units to speak in
 * @returns R², the root mean square of the residuals and the largest one; for a line through the
 *   points, that it has none
 */
export function fitWords(curve: Curve, units: UnitSystem): string {
  if (curve.fit?.kind !== 'smooth')
    return 'The line goes exactly through every point that is used.';
  const { rSquared, rms, largest } = fitQuality(curve);
  const show = (pressure: number) => formatQuantity('pressure', units, pressure).text;
  const share = rSquared === null ? '' : `R² ${rSquared.toFixed(4)}, `;
  const side = largest.residual >= 0 ? 'above' : 'below';
  return `${share}RMS residual ${show(rms)}. Point ${largest.index + 1}, at ${formatQuantity('flow', units, largest.flow).text}, lies farthest from the line: ${show(Math.abs(largest.residual))} ${side}.`;
}
