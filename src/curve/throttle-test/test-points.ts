// The points that a test gives, ready for a curve of total suction.

import type { CurvePoint } from '../curve-data.ts';
import { type ReducedSetting, reduceSetting } from './reduce-setting.ts';
import type { ThrottleTest } from './throttle-test.ts';

/** A whole test, reduced. */
export interface ReducedTest {
  /** One for each throttle setting, in their order. */
  readonly settings: readonly ReducedSetting[];
  /** Total suction against flow, by rising flow; bounds are no points. */
  readonly points: readonly CurvePoint[];
}

/**
 * Reduces all settings of a test.
 *
 * @param test - the test
 * @returns every setting, and the points: flow [m³/s] and total suction [Pa] in the air of the test
 * @throws RangeError if a number is not finite or has the wrong sign
 */
export function reduceTest(test: ThrottleTest): ReducedTest {
  const settings = test.rows.map((setting) => reduceSetting(test, setting));
  const points = settings
    .flatMap((setting) =>
      setting.kind === 'point'
        ? [{ flow: setting.steps.flow, pressure: setting.steps.suction }]
        : [],
    )
    .toSorted((a, b) => a.flow - b.flow);
  return { settings, points };
}
