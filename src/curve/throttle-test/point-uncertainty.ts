// How far a measured point may be off, from what the makers of the instruments state.
// First-order propagation; every input is taken as independent of the others. An anemometer that
// reads high reads high at every place of a traverse, so averaging does not help against it.
// Sources:
// 1. JCGM 100:2008 (GUM), 4.3.7: a stated limit ± a without more is a rectangular distribution, so a
//    standard uncertainty of a/√3; 5.1.2: the law of propagation; 6.2.1: twice the combined standard
//    uncertainty is an interval of about 95 % (from memory, unverified).

import { notNegative } from '../guard.ts';
import type { Readings } from './mean-velocity.ts';
import type { ReductionSteps } from './reduction-steps.ts';
import type { Accuracy, ThrottleTest } from './throttle-test.ts';

/** Twice the combined standard uncertainty. */
const COVERAGE = 2;

/** What can be off. */
export type UncertainInput = 'bore' | 'air readings' | 'centre factor' | 'density' | 'suction';

/** What reads. */
export type Instrument = 'static' | 'velocity' | 'velocityPressure';

/** What one input adds, as a standard uncertainty. */
export interface Contribution {
  readonly input: UncertainInput;
  /** [m³/s] */
  readonly flow: number;
  /** [Pa] */
  readonly suction: number;
}

/** How far a point may be off: ± these, about 95 % of the time. */
export interface PointUncertainty {
  /** [m³/s] */
  readonly flow: number;
  /** [Pa] */
  readonly suction: number;
  /** What makes it up, as standard uncertainties. */
  readonly contributions: readonly Contribution[];
  /** Instruments that were used and have no stated accuracy, so that they count as exact. */
  readonly unstated: readonly Instrument[];
}

/**
 * Uncertainty of a reduced point.
 *
 * Q = A·V and H = |SP| − ½ρV², with V the mean speed. With each limit ± a as a/√3,
 *
 *     u(Q)² = Σ (∂Q/∂x · u(x))²,    u(H)² = Σ (∂H/∂x · u(x))²
 *
 * over bore, air readings, centre factor, density and suction.
 *
 * @param test - the test, with the accuracies
 * @param diameter - inside diameter of the pipe [m]
 * @param steps - the reduced setting
 * @returns the uncertainties of flow [m³/s] and total suction [Pa], for about 95 %
 * @throws RangeError if an accuracy is below zero or not finite
 */
export function pointUncertainty(
  test: ThrottleTest,
  diameter: number,
  steps: ReductionSteps,
): PointUncertainty {
  const contributions = [
    boreContribution(test, diameter, steps),
    ...airContributions(test, steps),
    {
      input: 'suction',
      flow: 0,
      suction: standard(limitOf(test.instruments.static, steps.static)),
    },
  ] as const;
  return {
    flow: COVERAGE * Math.hypot(...contributions.map(({ flow }) => flow)),
    suction: COVERAGE * Math.hypot(...contributions.map(({ suction }) => suction)),
    contributions,
    unstated: unstatedOf(test, steps.readings),
  };
}

function boreContribution(
  test: ThrottleTest,
  diameter: number,
  { flow }: ReductionSteps,
): Contribution {
  const bore = standard(notNegative('tolerance of the diameter', test.diameterTolerance ?? 0));
  return { input: 'bore', flow: ((2 * flow) / diameter) * bore, suction: 0 };
}

/** All that reaches flow and suction by way of the mean speed. */
function airContributions(test: ThrottleTest, steps: ReductionSteps): Contribution[] {
  const { area, density, readings, velocity } = steps;
  if (readings === null || velocity === null) return [];
  const { mean, factor } = velocity;
  // ½ρV² and the flow, per metre a second of mean speed.
  const viaSpeed = (input: UncertainInput, speed: number, direct = 0): Contribution => ({
    input,
    flow: Math.abs(area * speed),
    suction: Math.abs(density * mean * speed + direct),
  });
  const speedPerDensity = -mean * densityPower(test, readings);
  const relative = standard(notNegative('tolerance of the density', test.densityTolerance ?? 0));
  const centre = readings.place === 'centre' ? (test.centre.tolerance ?? 0) : 0;
  return [
    viaSpeed('air readings', factor * standard(speedLimit(test, steps, readings))),
    viaSpeed('centre factor', (mean / factor) * standard(notNegative('tolerance', centre))),
    viaSpeed('density', speedPerDensity * relative, 0.5 * density * mean ** 2 * relative),
  ];
}

/** The speed goes with density to the power of minus this. */
function densityPower({ instruments }: ThrottleTest, { quantity }: Readings): number {
  if (quantity === 'velocity-pressure') return 0.5;
  return instruments.velocityDensity === undefined ? 0 : 1;
}

/** How far the average of the speeds may be off, all readings being off the same way [m/s]. */
function speedLimit(
  { instruments }: ThrottleTest,
  { density }: ReductionSteps,
  { values, quantity }: Readings,
): number {
  const limits = values.map((value) => {
    if (quantity === 'velocity') {
      const shown = instruments.velocityDensity ?? density;
      return (limitOf(instruments.velocity, value) * shown) / density;
    }
    const limit = limitOf(instruments.velocityPressure, value);
    // The slope of a root has no end at zero; there the root of the limit itself is the limit.
    const steepest = Math.sqrt((2 * limit) / density);
    return value > 0 ? Math.min(limit / Math.sqrt(2 * density * value), steepest) : steepest;
  });
  return limits.reduce((sum, limit) => sum + limit, 0) / limits.length;
}

function limitOf(accuracy: Accuracy | undefined, reading: number): number {
  const fraction = notNegative('accuracy', accuracy?.fraction ?? 0);
  return fraction * reading + notNegative('accuracy', accuracy?.absolute ?? 0);
}

function standard(limit: number): number {
  return limit / Math.sqrt(3);
}

function unstatedOf({ instruments }: ThrottleTest, readings: Readings | null): Instrument[] {
  const used: Instrument[] = ['static'];
  if (readings !== null)
    used.push(readings.quantity === 'velocity' ? 'velocity' : 'velocityPressure');
  return used.filter((instrument) => instruments[instrument] === undefined);
}
