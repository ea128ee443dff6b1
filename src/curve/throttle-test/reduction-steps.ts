// The reduction of one throttle setting, step by step, so that each can be shown.
// Sources:
// 1. Total suction is |SP| − ½ρV²: a tap reads the suction and the velocity pressure.
// 2. ANSI/AMCA 210 and ISO 3966 for the averaging; see mean-velocity.ts.

import { velocityPressure } from '../../air/velocity-pressure.ts';
import { notNegative, positive } from '../guard.ts';
import { type MeanVelocity, meanVelocity, type Readings } from './mean-velocity.ts';
import { testDensity } from './test-density.ts';
import type { ThrottleTest } from './throttle-test.ts';

/** Everything on the way from readings to flow and suction. */
export interface ReductionSteps {
  /** [kg/m³] */
  readonly density: number;
  /** Area of the bore [m²] */
  readonly area: number;
  /** What was read of the air; null where the pipe was closed. */
  readonly readings: Readings | null;
  /** Null where the pipe was closed. */
  readonly velocity: MeanVelocity | null;
  /** ½ρV² at the mean speed [Pa] */
  readonly velocityPressure: number;
  /** Suction at the tap [Pa] */
  readonly static: number;
  /** [m³/s] */
  readonly flow: number;
  /** Total suction, |SP| − ½ρV² [Pa] */
  readonly suction: number;
}

/**
 * The steps from complete readings to flow and suction: density, area, mean speed, Q = A·V, and
 * H = |SP| − ½ρV².
 *
 * @param test - the test: air, instruments, centre factor
 * @param diameter - inside diameter of the pipe [m]
 * @param suction - what the tap shows, a positive number [Pa]
 * @param readings - what was read of the air; null for a closed pipe
 * @returns every step; the total suction is below zero where the readings contradict each other [Pa]
 * @throws RangeError if a number is not finite or has the wrong sign
 */
export function reductionSteps(
  test: ThrottleTest,
  diameter: number,
  suction: number,
  readings: Readings | null,
): ReductionSteps {
  const density = testDensity(test.air);
  const area = (Math.PI / 4) * positive('diameter', diameter) ** 2;
  const velocity = readings === null ? null : meanVelocity(test, density, readings);
  const mean = velocity?.mean ?? 0;
  const pressure = velocityPressure(density, mean);
  return {
    density,
    area,
    readings,
    velocity,
    velocityPressure: pressure,
    static: notNegative('suction', suction),
    flow: area * mean,
    suction: suction - pressure,
  };
}
