// What somebody entered of a collector: points, and what these points mean.
// Plain data; a curve file and the collector of a shop both hold it.

/** One entered point: flow [m³/s] and the pressure [Pa] that the basis gives a meaning. */
export interface CurvePoint {
  readonly flow: number;
  readonly pressure: number;
  /** True: kept and shown, but not used. */
  readonly aside?: true;
}

/**
 * How the line follows the points.
 *
 * - `through`: exactly through the used points
 * - `smooth`: by least squares between them, in at most `pieces` [-] pieces
 */
export type Fit =
  | { readonly kind: 'through' }
  | { readonly kind: 'smooth'; readonly pieces?: number };

/** One power point: flow [m³/s] and the shaft power [W] drawn at it. */
export interface PowerPoint {
  readonly flow: number;
  readonly power: number;
}

/**
 * What the entered pressures are.
 *
 * - `fan-static`: fan static pressure as rated to ANSI/AMCA 210 or ISO 5801
 * - `tap`: suction, as a positive number, at a tap in an inlet pipe of inside `diameter` [m]
 * - `total`: total suction at the inlet flange
 */
export type Basis =
  | { readonly kind: 'fan-static' }
  | { readonly kind: 'tap'; readonly diameter: number }
  | { readonly kind: 'total' };

/** Whether the clean filter and the separator were in place when the points were taken. */
export interface Includes {
  readonly filter: boolean;
  readonly separator: boolean;
}

/** The part of a curve document that is computed with. */
export interface CurveData {
  readonly basis: Basis;
  readonly includes: Includes;
  /** Density of the air at which the points hold [kg/m³] */
  readonly density: number;
  /** At least two that are used; for a line through them, their flow strictly rising. */
  readonly points: readonly CurvePoint[];
  /** Exactly through the points unless it says otherwise. */
  readonly fit?: Fit;
  /** Shaft power, flow strictly rising. Comes before `efficiency` where both are there. */
  readonly power?: readonly PowerPoint[];
  /** Air power over shaft power [-] */
  readonly efficiency?: number;
  /** Rated shaft power of the motor [W] */
  readonly nameplate?: number;
}
