// Changes of what holds for all settings of a test: its air, and how exact its instruments are.

import { testDensity } from '../../curve/throttle-test/test-density.ts';
import type { TestSheet } from '../../shop/schema/test-schema.ts';
import { withOrWithout } from '../with-or-without.ts';

type Instruments = TestSheet['instruments'];
/** The instruments whose accuracy is stated. */
export type Instrument = 'static' | 'velocity' | 'velocityPressure';

/** Standard pressure at the sea's level, where a barometer is to be read anew [Pa]. */
const SEA_LEVEL = 101_325;
/** Weather to begin with, where only a density was said [°C] and [-]. */
const USUAL_WEATHER = { temperature: 20, humidity: 0.5 };

/**
 * The instruments with another accuracy of one. Of which nothing is stated any more is left out, and
 * counts as exact.
 *
 * @param instruments - as they are stated
 * @param key - which one
 * @param accuracy - a part of the reading [-], and an amount in any case
 * @returns a copy
 */
export function withAccuracy(
  instruments: Instruments,
  key: Instrument,
  accuracy: { readonly fraction?: number; readonly absolute?: number },
): Instruments {
  const isStated = accuracy.fraction !== undefined || accuracy.absolute !== undefined;
  return withOrWithout(instruments, key, isStated ? accuracy : undefined);
}

/**
 * The same air stated in another way, keeping what both know.
 *
 * @param air - as it is stated
 * @param kind - the other way
 * @returns the air
 */
export function airAs(air: TestSheet['air'], kind: string): TestSheet['air'] {
  if (kind === air.kind) return air;
  if (kind === 'density') return { kind, density: Number(testDensity(air).toFixed(4)) };
  const { temperature, humidity } = air.kind === 'density' ? USUAL_WEATHER : air;
  return kind === 'barometer'
    ? { kind, pressure: SEA_LEVEL, temperature, humidity }
    : { kind: 'room', altitude: 0, temperature, humidity };
}
