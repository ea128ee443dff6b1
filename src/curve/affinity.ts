// The fan laws: what happens to flow, pressure and power at another speed, wheel or density.
// Sources:
// 1. ISO 5801:2017 and ANSI/AMCA 210-16, conversion rules for incompressible flow
//    (from memory, unverified).

import type { Air } from '../air/air.ts';
import type { CollectorSpec } from './collector-spec.ts';
import { positive } from './guard.ts';

/** What the collector's running conditions are to those of its curve. */
export interface Conditions {
  /** Speed over the speed of the curve [-] */
  readonly speedRatio: number;
  /** Wheel diameter over that of the curve [-] */
  readonly wheelRatio: number;
  /** Air density over that of the curve [-] */
  readonly densityRatio: number;
}

/** By what a curve is multiplied, axis by axis. */
export interface FanLaws {
  /** [-] */
  readonly flow: number;
  /** [-] */
  readonly pressure: number;
  /** [-] */
  readonly power: number;
}

/**
 * The three fan laws, with s the speed, r the wheel and d the density ratio:
 * flow × s·r³, pressure × d·s²·r², shaft power × d·s³·r⁵.
 *
 * They hold for a fan of the same shape, with losses that grow as the square of the flow.
 * They don't hold for a filter, which is why its part is taken out of a curve before scaling.
 *
 * @param conditions - the three ratios, each above zero
 * @returns the three factors; power is always flow × pressure
 * @throws RangeError if a ratio is not above zero
 * @example
 * fanLaws({ speedRatio: 0.5, wheelRatio: 1, densityRatio: 1 }).power; // => 0.125
 * fanLaws({ speedRatio: 1, wheelRatio: 2, densityRatio: 1 }).flow; // => 8
 */
export function fanLaws(conditions: Conditions): FanLaws {
  const s = positive('speed ratio', conditions.speedRatio);
  const r = positive('wheel ratio', conditions.wheelRatio);
  const d = positive('density ratio', conditions.densityRatio);
  return { flow: s * r ** 3, pressure: d * s ** 2 * r ** 2, power: d * s ** 3 * r ** 5 };
}

/**
 * The fan laws from the collector's curve to the collector as it runs in the shop.
 *
 * @param spec - the collector of the shop
 * @param air - the air in the room
 * @returns the three factors; all 1 at the speed, wheel and density of the curve
 * @throws RangeError if a density or a ratio is not above zero
 */
export function fanLawsFor(spec: CollectorSpec, air: Air): FanLaws {
  return fanLaws({
    speedRatio: spec.speedRatio ?? 1,
    wheelRatio: spec.wheelRatio ?? 1,
    densityRatio: positive('air density', air.density) / positive('density', spec.curve.density),
  });
}
