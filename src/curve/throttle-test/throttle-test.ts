// A test of one's own collector, as it was read: at each throttle setting a suction at a tap and what
// the air did in the pipe. Plain data; a curve file holds it. What was not read yet is absent.

/** The air of the test: by height [m], by a barometer [Pa], with [°C] and humidity [-], or [kg/m³]. */
export type TestAir =
  | {
      readonly kind: 'room';
      readonly altitude: number;
      readonly temperature: number;
      readonly humidity: number;
    }
  | {
      readonly kind: 'barometer';
      readonly pressure: number;
      readonly temperature: number;
      readonly humidity: number;
    }
  | { readonly kind: 'density'; readonly density: number };

/** How far an instrument may be off: a fraction of the reading [-] plus so much in any case. */
export interface Accuracy {
  readonly fraction?: number;
  /** In the unit of the reading: [Pa] or [m/s] */
  readonly absolute?: number;
}

/** The instruments of a test; one that is absent has no stated accuracy. */
export interface Instruments {
  readonly static?: Accuracy;
  readonly velocity?: Accuracy;
  readonly velocityPressure?: Accuracy;
  /**
   * Density for which the anemometer shows the speed, whatever the air is [kg/m³]. Absent: it shows
   * the speed that the air has.
   */
  readonly velocityDensity?: number;
}

/**
 * What was read of the moving air. A single reading is one at the centre of the pipe. `overRange`:
 * the instrument could not show as much, and the reading is the end of its range.
 */
export type AirReading =
  | { readonly kind: 'closed' }
  | {
      /** `velocity` [m/s], `velocity-pressure` [Pa] */
      readonly kind: 'velocity' | 'velocity-pressure';
      readonly reading?: number;
      readonly overRange?: true;
    }
  | {
      /** Places of a traverse, in [m/s] or [Pa]; null where not read yet. */
      readonly kind: 'velocity-traverse' | 'velocity-pressure-traverse';
      readonly readings: readonly (number | null)[];
      readonly overRange?: true;
    };

/** One throttle setting. */
export interface ThrottleSetting {
  readonly id: string;
  /** Suction at the tap, a positive number [Pa] */
  readonly static?: number;
  readonly staticOverRange?: true;
  readonly air: AirReading;
}

/** A test: one pipe, one air, one set of instruments, many throttle settings. */
export interface ThrottleTest {
  /** Inside diameter of the pipe [m] */
  readonly diameter?: number;
  /** How far it may be off [m] */
  readonly diameterTolerance?: number;
  readonly air: TestAir;
  /** How far the density may be off, as a fraction [-] */
  readonly densityTolerance?: number;
  /** Mean speed over the speed at the centre [-], and how far that may be off [-] */
  readonly centre: { readonly factor: number; readonly tolerance?: number };
  readonly instruments: Instruments;
  readonly rows: readonly ThrottleSetting[];
}
