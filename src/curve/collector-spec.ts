// The collector as it stands in the shop: its curve, how fast it runs, its filter, its separator.
// Plain data; `collectorCurve` turns it into the suction that the ducts get.

import type { CurveData } from './curve-data.ts';

/**
 * How the clean filter resists. Its loss is `resistance · blinding · flow` (Darcy).
 *
 * - `resistance`: [Pa·s/m³] as a plain number
 * - `media`: `area` [m²] of media that lets `testVelocity` [m/s] through at `testPressure` [Pa]
 * - `measured`: one pair, `pressure` [Pa] across it at `flow` [m³/s]
 *
 * `blinding` [-] is 1 when clean (the default) and more as it blinds. `viscosity` [Pa·s] is that
 * of the air the resistance is stated for; the default is air at 20 °C.
 */
export type FilterSpec =
  | { readonly kind: 'none' }
  | {
      readonly kind: 'resistance';
      readonly resistance: number;
      readonly blinding?: number;
      readonly viscosity?: number;
    }
  | {
      readonly kind: 'media';
      readonly area: number;
      readonly testPressure: number;
      readonly testVelocity: number;
      readonly blinding?: number;
    }
  | {
      readonly kind: 'measured';
      readonly flow: number;
      readonly pressure: number;
      readonly blinding?: number;
    };

/** A separator loses `coefficient` [-] times the velocity pressure in its inlet `diameter` [m]. */
export type SeparatorSpec =
  | { readonly kind: 'none' }
  | { readonly kind: 'coefficient'; readonly coefficient: number; readonly diameter: number };

/**
 * Several collectors alike, each with its own filter and separator. In parallel they share the flow,
 * in series each takes all of it. `count` [-] is a whole number, 1 or more.
 */
export interface Arrangement {
  readonly kind: 'parallel' | 'series';
  readonly count: number;
}

/** The collector of a shop. */
export interface CollectorSpec {
  readonly curve: CurveData;
  /** Speed it runs at over the speed of the curve [-]; default 1 */
  readonly speedRatio?: number;
  /** Wheel diameter over the wheel diameter of the curve [-]; default 1 */
  readonly wheelRatio?: number;
  readonly filter: FilterSpec;
  readonly separator: SeparatorSpec;
  /** One collector unless it says otherwise. */
  readonly arrangement?: Arrangement;
}
