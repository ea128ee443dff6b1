// Several collectors alike on one main: side by side, or one behind the other.
// Each unit comes whole, with its own separator before its fan and its own filter behind it, so all
// of its losses stand inside the unit and see the unit's own flow. A separator or a filter that
// several units share belongs to the ducts, as a fitting.
// Sources:
// 1. Fans in parallel add their flows at one pressure, fans in series their pressures at one flow;
//    textbook rule, e.g. F. M. White, Fluid Mechanics, ch. 11 (from memory, unverified). Air is
//    taken as incompressible, so the second in a row meets the density of the first.

import type { Arrangement } from './collector-spec.ts';

/** The factors of a collector's curve: pressureScale · p(Q / flowScale) − quadratic · Q² − linear · Q. */
export interface CurveFactors {
  /** [-] */
  readonly flowScale: number;
  /** [-] */
  readonly pressureScale: number;
  /** [Pa/(m³/s)²] */
  readonly quadratic: number;
  /** [Pa·s/m³] */
  readonly linear: number;
}

/**
 * How many units there are.
 *
 * @param arrangement - how they stand; one unit if nothing is said
 * @returns number of units, a whole number, 1 or more [-]
 * @throws RangeError unless it is a whole number above zero
 * @example
 * unitCount({ kind: 'series', count: 2 }); // => 2
 */
export function unitCount(arrangement: Arrangement | undefined): number {
  const count = arrangement?.count ?? 1;
  if (Number.isInteger(count) && count > 0) return count;
  throw new RangeError(`The number of collectors must be a whole number from 1, not ${count}.`);
}

/**
 * The flow through each unit.
 *
 * @param arrangement - how they stand; one unit if nothing is said
 * @param flow - flow at the flange of them all [m³/s]
 * @returns flow through one unit [m³/s]
 * @example
 * unitFlow({ kind: 'parallel', count: 2 }, 0.5); // => 0.25
 * unitFlow({ kind: 'series', count: 2 }, 0.5); // => 0.5
 */
export function unitFlow(arrangement: Arrangement | undefined, flow: number): number {
  return arrangement?.kind === 'parallel' ? flow / unitCount(arrangement) : flow;
}

/**
 * The curve of all units together, from that of one:
 *
 * - n in parallel: H(Q) = H₁(Q/n)
 * - n in series: H(Q) = n·H₁(Q)
 *
 * Exact, and of the same closed form: in parallel the flow scale grows by n, the square's factor
 * falls by n² and the filter's by n; in series the pressure scale and both factors grow by n.
 * In parallel the units are taken to share the flow evenly. Where the curve of one rises they may
 * not, which is the same stretch left of the peak that is marked as unreliable for one.
 *
 * @param unit - one collector as it runs now
 * @param arrangement - how they stand; one unit if nothing is said
 * @returns the curve of them all [m³/s] to [Pa]
 * @throws RangeError unless the number is a whole number above zero
 */
export function arranged<Curve extends CurveFactors>(
  unit: Curve,
  arrangement: Arrangement | undefined,
): Curve {
  const count = unitCount(arrangement);
  if (arrangement === undefined || count === 1) return unit;
  switch (arrangement.kind) {
    case 'parallel':
      return {
        ...unit,
        flowScale: count * unit.flowScale,
        quadratic: unit.quadratic / count ** 2,
        linear: unit.linear / count,
      };
    case 'series':
      return {
        ...unit,
        pressureScale: count * unit.pressureScale,
        quadratic: count * unit.quadratic,
        linear: count * unit.linear,
      };
    default:
      return arrangement.kind satisfies never;
  }
}
