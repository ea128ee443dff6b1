// What the motor has to deliver to the wheel at a flow, and how that compares to its nameplate.
// Sources:
// 1. Air power is flow times total pressure; efficiency is air power over shaft power
//    (ANSI/AMCA 210, ISO 5801).

import type { Air } from '../air/air.ts';
import { valueAt } from '../math/hermite.ts';
import { pchip } from '../math/pchip.ts';
import { fanLawsFor } from './affinity.ts';
import { unitCount, unitFlow } from './arrangement.ts';
import type { CollectorSpec } from './collector-spec.ts';
import type { CurveData } from './curve-data.ts';
import { enteredSpline } from './entered-spline.ts';
import { notNegative, positive } from './guard.ts';
import { tapFactor } from './tap-factor.ts';
import { usedPoints } from './used-points.ts';

/** Why there is no shaft power to give. */
export type UnknownPower = 'not entered' | 'no pressure at this flow';

/** Shaft power [W], or why there is none to give. */
export type ShaftPower =
  | {
      readonly kind: 'known';
      /** Of all motors together. */
      readonly power: number;
      /** False where the points that it rests on had to be continued. */
      readonly withinPoints: boolean;
      /**
       * Power of one motor over its nameplate [-]; above 1 it is overloaded. Absent without a
       * nameplate.
       */
      readonly load?: number;
    }
  | { readonly kind: 'unknown'; readonly reason: UnknownPower };

/**
 * Shaft power at a flow, as the collector runs now.
 *
 * - from power points: their spline W, as W(Q/F) · d·s³·r⁵ with F = s·r³
 * - else from an efficiency: Q · p / efficiency
 *
 * p is the total suction that the entered points stand for, at the present speed, wheel and
 * density. So the efficiency goes with the points: with fan static pressure it is the static
 * efficiency, with a filter in the points it is that of fan and filter together. A single
 * efficiency holds near the flow it was stated for and is a guess elsewhere.
 *
 * Of several collectors alike each takes its share of the flow, or all of it in series; the powers
 * add up, and each motor has the nameplate of the curve.
 *
 * The nameplate is taken as it stands; a motor that is slowed by a drive can deliver less.
 *
 * @param spec - the collector of the shop
 * @param air - the air in the room
 * @param flow - flow at the flange, 0 or more [m³/s]
 * @returns power [W], never below zero, with the load on the nameplate [-] where there is one
 * @throws RangeError if a number is not finite or has the wrong sign; the message holds the value
 */
export function shaftPower(spec: CollectorSpec, air: Air, flow: number): ShaftPower {
  const { curve } = spec;
  const scale = fanLawsFor(spec, air);
  const units = unitCount(spec.arrangement);
  const testFlow = unitFlow(spec.arrangement, notNegative('flow', flow)) / scale.flow;
  const power = testPower(curve, testFlow);
  if (typeof power === 'string') return { kind: 'unknown', reason: power };
  const running = scale.power * power;
  return {
    kind: 'known',
    power: units * running,
    withinPoints: isBetween(testFlow, curve.power ?? usedPoints(curve)),
    ...(curve.nameplate === undefined
      ? {}
      : { load: running / positive('nameplate', curve.nameplate) }),
  };
}

/** Shaft power at the conditions of the curve [W], or why there is none. */
function testPower(curve: CurveData, flow: number): number | UnknownPower {
  if (curve.power !== undefined) {
    const power = through(curve.power, (point) => point.power);
    return Math.max(0, valueAt(power, flow));
  }
  if (curve.efficiency === undefined) return 'not entered';
  const pressure = valueAt(enteredSpline(curve), flow) - tapFactor(curve) * flow ** 2;
  if (!(pressure > 0)) return 'no pressure at this flow';
  return (flow * pressure) / positive('efficiency', curve.efficiency);
}

function through<Point extends { readonly flow: number }>(
  points: readonly Point[],
  height: (point: Point) => number,
) {
  return pchip(
    points.map((point) => point.flow),
    points.map(height),
  );
}

/** Readings to be smoothed may stand in any order. */
function isBetween(flow: number, points: readonly { readonly flow: number }[]): boolean {
  return points.some((point) => point.flow <= flow) && points.some((point) => point.flow >= flow);
}
