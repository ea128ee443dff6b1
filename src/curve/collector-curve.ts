// What suction the collector has left for the ducts at its inlet flange, flow by flow.
// One closed form for every kind of curve, filter and separator, so that it is quick to read.

import type { Air } from '../air/air.ts';
import { type HermiteSpline, readSpline, slopeAt, valueAt } from '../math/hermite.ts';
import { fanLawsFor } from './affinity.ts';
import { arranged } from './arrangement.ts';
import type { CollectorSpec } from './collector-spec.ts';
import type { CurvePoint } from './curve-data.ts';
import { enteredSpline } from './entered-spline.ts';
import { blindingOf, cleanResistance, TEST_VISCOSITY } from './filter-resistance.ts';
import { notNegative } from './guard.ts';
import { tapFactor } from './tap-factor.ts';
import { velocityPressureFactor } from './velocity-pressure-factor.ts';

/**
 * The total suction available at the flange as a function of flow:
 *
 *     H(Q) = pressureScale · spline(Q / flowScale) − quadratic · Q² − linear · Q
 *
 * `spline` is the entered points as they stand. `flowScale` [-] and `pressureScale` [-] carry
 * them to the present speed, wheel and density. `quadratic` [Pa/(m³/s)²] is the velocity pressure
 * at a suction tap and a separator that the points don't hold; `linear` [Pa·s/m³] is the filter.
 */
export interface CollectorCurve {
  readonly spline: HermiteSpline;
  readonly flowScale: number;
  readonly pressureScale: number;
  readonly quadratic: number;
  readonly linear: number;
  /** The entered points as they stand, also those set aside; nothing is computed from them here. */
  readonly points?: readonly CurvePoint[];
}

/**
 * Total suction that the collector leaves for the ducts: after its separator and filter.
 *
 * Continuous, with a continuous slope. Outside the entered points the spline goes on straight.
 *
 * @param curve - the collector as it runs now
 * @param flow - flow at the flange, 0 or more [m³/s]
 * @returns available total suction, relative to the room [Pa]; negative past the free flow
 * @throws RangeError if `flow` is not a finite number
 */
export function availableSuction(curve: CollectorCurve, flow: number): number {
  return producedPressure(curve, flow) - flow * (curve.quadratic * flow + curve.linear);
}

/**
 * Slope of the available suction, dH/dQ.
 *
 * @param curve - the collector as it runs now
 * @param flow - flow at the flange, 0 or more [m³/s]
 * @returns the slope [Pa·s/m³]; continuous, below zero where more flow means less suction
 * @throws RangeError if `flow` is not a finite number
 */
export function availableSlope(curve: CollectorCurve, flow: number): number {
  const produced =
    (curve.pressureScale / curve.flowScale) * slopeAt(curve.spline, flow / curve.flowScale);
  return produced - 2 * curve.quadratic * flow - curve.linear;
}

/**
 * Available suction and its slope in one reading, for loops that need both.
 *
 * @param curve - the collector as it runs now
 * @param flow - flow at the flange, 0 or more [m³/s]
 * @param out - receives the suction [Pa] and its slope [Pa·s/m³], shape (2)
 * @throws RangeError if `flow` is not a finite number
 */
export function readAvailable(curve: CollectorCurve, flow: number, out: Float64Array): void {
  const { flowScale, pressureScale, quadratic, linear } = curve;
  readSpline(curve.spline, flow / flowScale, out);
  out[0] = pressureScale * (out[0] as number) - flow * (quadratic * flow + linear);
  out[1] = (pressureScale / flowScale) * (out[1] as number) - 2 * quadratic * flow - linear;
}

/**
 * What the entered points say, carried to the present speed, wheel and density; before the tap's
 * velocity pressure, the separator and the filter are taken off.
 *
 * @param curve - the collector as it runs now
 * @param flow - flow at the flange, 0 or more [m³/s]
 * @returns produced pressure [Pa]
 * @throws RangeError if `flow` is not a finite number
 */
export function producedPressure(curve: CollectorCurve, flow: number): number {
  return curve.pressureScale * valueAt(curve.spline, flow / curve.flowScale);
}

/**
 * The collector's curve as it runs in the shop.
 *
 * At the test, with p the entered points, a the tap's velocity pressure over flow squared, and R
 * the clean filter if the points hold it (else 0), the fan and whatever separator the points hold
 * make
 *
 *     B(q) = p(q) − a·q² + R·q
 *
 * With F = s·r³ and P = d·s²·r² (speed, wheel and density ratio) they now make P·B(Q/F). The
 * filter goes back in, blinded by m and in the air of the shop, and so does a separator of
 * coefficient K at a bore of area A that the points don't hold:
 *
 *     H(Q) = P·B(Q/F) − K·½ρ/A²·Q² − m·R′·Q
 *          = P·p(Q/F) − (P·a/F² + K·½ρ/A²)·Q² − (m·R′ − P·R/F)·Q
 *
 * At the test's own conditions the last bracket is (m − 1)·R. It is below zero where the curve is
 * scaled up by more than the filter is blinded. The filter has to come out first since its loss
 * goes with flow and viscosity, while all the rest goes with density and flow squared.
 *
 * A filter of unknown resistance ('none') in the points is scaled along with them. A separator in
 * the points is taken to grow with the wheel; `separator` then takes nothing off.
 *
 * All this is one unit; `arranged` puts several together.
 *
 * @param spec - the collector of the shop
 * @param air - the air in the room
 * @returns the curve in closed form
 * @throws RangeError if there are fewer than two points, flows that don't rise, or a number that
 *   is not finite or has the wrong sign; the message holds the value
 */
export function collectorCurve(spec: CollectorSpec, air: Air): CollectorCurve {
  const { curve, filter, separator } = spec;
  const scale = fanLawsFor(spec, air);
  const tap = (tapFactor(curve) * scale.pressure) / scale.flow ** 2;
  const separating =
    separator.kind === 'none' || curve.includes.separator
      ? 0
      : notNegative('separator coefficient', separator.coefficient) *
        velocityPressureFactor(air.density, separator.diameter);
  const tested = curve.includes.filter ? cleanResistance(filter, TEST_VISCOSITY) : 0;
  const unit: CollectorCurve = {
    points: curve.points,
    spline: enteredSpline(curve),
    flowScale: scale.flow,
    pressureScale: scale.pressure,
    quadratic: tap + separating,
    linear:
      blindingOf(filter) * cleanResistance(filter, air.viscosity) -
      (tested * scale.pressure) / scale.flow,
  };
  return arranged(unit, spec.arrangement);
}
