// How well the line follows the readings: figures to be shown beside it.
// Sources:
// 1. R² = 1 − Σ(p − line)² / Σ(p − mean)², the coefficient of determination
//    (N. R. Draper, H. Smith, Applied Regression Analysis; from memory, unverified).

import { valueAt } from '../math/hermite.ts';
import type { CurveData } from './curve-data.ts';
import { enteredSpline } from './entered-spline.ts';

/** A point's distance from the line. */
export interface Residual {
  /** Its place in the list of all points, from 0 [-] */
  readonly index: number;
  /** [m³/s] */
  readonly flow: number;
  /** Entered pressure less the line, so above zero where the reading is higher [Pa] */
  readonly residual: number;
}

/** How well a line follows the used points. */
export interface FitQuality {
  /** How many points are used [-] */
  readonly used: number;
  /** Part of the scatter that the line explains, 1 at best; null where all pressures are one [-] */
  readonly rSquared: number | null;
  /** Root of the mean square of the residuals, over the number of used points [Pa] */
  readonly rms: number;
  /** The used point that is farthest from the line. */
  readonly largest: Residual;
  /** Every used point, in their order. */
  readonly residuals: readonly Residual[];
}

/**
 * How well the entered line follows the used points. A line exactly through them has none but
 * rounding to tell.
 *
 * @param curve - the entered curve
 * @returns R² [-], the root mean square and every residual [Pa]
 * @throws RangeError if the used points make no curve
 */
export function fitQuality(curve: Pick<CurveData, 'points' | 'fit'>): FitQuality {
  const line = enteredSpline(curve);
  const used = curve.points.flatMap((point, index) => (point.aside ? [] : [{ ...point, index }]));
  const residuals = used.map(({ index, flow, pressure }) => ({
    index,
    flow,
    residual: pressure - valueAt(line, flow),
  }));
  const left = sumOf(residuals, ({ residual }) => residual ** 2);
  const mean = sumOf(used, ({ pressure }) => pressure) / used.length;
  const scatter = sumOf(used, ({ pressure }) => (pressure - mean) ** 2);
  return {
    used: used.length,
    rSquared: scatter > 0 ? 1 - left / scatter : null,
    rms: Math.sqrt(left / used.length),
    largest: residuals.reduce((most, each) =>
      Math.abs(each.residual) > Math.abs(most.residual) ? each : most,
    ),
    residuals,
  };
}

function sumOf<Item>(items: readonly Item[], value: (item: Item) => number): number {
  return items.reduce((sum, item) => sum + value(item), 0);
}
