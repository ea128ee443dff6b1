// From what was read of the moving air to its mean speed in the pipe.
// Sources:
// 1. ANSI/AMCA 210 and ISO 3966: the mean of a traverse is that of the speeds, so of the roots of
//    velocity pressures and not of the velocity pressures (from memory, unverified).
// 2. At places of equal weight, by log-Tchebycheff or by equal areas, it is their plain mean.

import { velocityOfPressure } from '../../air/velocity-pressure.ts';
import type { AirReading, ThrottleTest } from './throttle-test.ts';

/** The way from readings to a mean speed. */
export interface MeanVelocity {
  /** Speed of the air at each place that was read [m/s] */
  readonly velocities: readonly number[];
  /** Their plain mean [m/s] */
  readonly average: number;
  /** What the mean is multiplied by: the centre's factor, 1 for a traverse [-] */
  readonly factor: number;
  /** Mean speed in the pipe [m/s] */
  readonly mean: number;
}

/** The numbers that were read, and whether each is a velocity pressure. */
export interface Readings {
  /** [m/s] or [Pa] */
  readonly values: readonly number[];
  readonly quantity: 'velocity' | 'velocity-pressure';
  readonly place: 'centre' | 'traverse';
}

/**
 * What was read of the moving air, once it is all there.
 *
 * @param air - the readings of one throttle setting, not of a closed pipe
 * @returns the numbers [m/s] or [Pa]; or how many are still to be read [-]
 */
export function readingsOf(air: Exclude<AirReading, { kind: 'closed' }>): Readings | number {
  switch (air.kind) {
    case 'velocity':
    case 'velocity-pressure':
      if (air.reading === undefined) return 1;
      return { values: [air.reading], quantity: air.kind, place: 'centre' };
    case 'velocity-traverse':
    case 'velocity-pressure-traverse': {
      const values = air.readings.filter((reading) => reading !== null);
      const missing = air.readings.length - values.length;
      if (missing > 0) return missing;
      const quantity = air.kind === 'velocity-traverse' ? 'velocity' : 'velocity-pressure';
      return { values, quantity, place: 'traverse' };
    }
    default:
      return air satisfies never;
  }
}

/**
 * Mean speed in the pipe:
 *
 * - each velocity pressure gives √(2p/ρ); each speed of an anemometer that shows it for a fixed
 *   density ρₛ is really ρₛ/ρ times as much
 * - a traverse is averaged; a reading at the centre is multiplied by the centre's factor
 *
 * @param test - the test
 * @param density - density of the air [kg/m³]
 * @param readings - what was read, [m/s] or [Pa]
 * @returns the mean [m/s], with every step
 * @throws RangeError if a reading is below zero or a density is not above zero
 */
export function meanVelocity(
  test: Pick<ThrottleTest, 'centre' | 'instruments'>,
  density: number,
  readings: Readings,
): MeanVelocity {
  const shown = test.instruments.velocityDensity ?? density;
  const velocities = readings.values.map((value) =>
    readings.quantity === 'velocity'
      ? (value * shown) / density
      : velocityOfPressure(density, value),
  );
  const average = velocities.reduce((sum, velocity) => sum + velocity, 0) / velocities.length;
  const factor = readings.place === 'centre' ? test.centre.factor : 1;
  return { velocities, average, factor, mean: factor * average };
}
