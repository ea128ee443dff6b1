// From the readings at one throttle setting to a point of the curve, or why there is none.
// The pipe runs from the room to the collector; tap and speed readings are in the same bore. What
// the pipe between tap and flange loses is counted to the collector, so it should be short.

import { readingsOf } from './mean-velocity.ts';
import { type PointUncertainty, pointUncertainty } from './point-uncertainty.ts';
import { type ReductionSteps, reductionSteps } from './reduction-steps.ts';
import type { ThrottleSetting, ThrottleTest } from './throttle-test.ts';

/** What is still to be read, and how many readings that is [-]. */
export interface Missing {
  readonly what: 'diameter' | 'static' | 'air';
  readonly count: number;
}

/** What a throttle setting amounts to. */
export type ReducedSetting =
  | {
      readonly kind: 'point';
      readonly id: string;
      readonly steps: ReductionSteps;
      readonly uncertainty: PointUncertainty;
    }
  | {
      /**
       * An instrument was over its range, so this is no point: the flow is at least this where the
       * speed was over range, the static suction where the tap was. If only the speed was, the total
       * suction is at most that of the steps; if only the tap was, at least.
       */
      readonly kind: 'bound';
      readonly id: string;
      readonly steps: ReductionSteps;
      readonly flow: 'exact' | 'at least';
      readonly suction: 'at most' | 'at least' | 'unknown';
    }
  | { readonly kind: 'incomplete'; readonly id: string; readonly missing: readonly Missing[] }
  | {
      /** The velocity pressure is above the suction, which no pipe open to the room can show. */
      readonly kind: 'impossible';
      readonly id: string;
      readonly steps: ReductionSteps;
    };

/**
 * Reduces one throttle setting.
 *
 * @param test - the test: pipe, air, instruments
 * @param setting - what was read at this setting
 * @returns flow [m³/s] and total suction [Pa] at the density of the test [kg/m³], with every step and
 *   the uncertainty; or a bound, or what is missing
 * @throws RangeError if a number is not finite or has the wrong sign
 */
export function reduceSetting(test: ThrottleTest, setting: ThrottleSetting): ReducedSetting {
  const { id, air } = setting;
  const readings = air.kind === 'closed' ? null : readingsOf(air);
  const { diameter } = test;
  if (diameter === undefined || setting.static === undefined || typeof readings === 'number') {
    const missing = [
      ...(diameter === undefined ? [{ what: 'diameter', count: 1 } as const] : []),
      ...(setting.static === undefined ? [{ what: 'static', count: 1 } as const] : []),
      ...(typeof readings === 'number' ? [{ what: 'air', count: readings } as const] : []),
    ];
    return { kind: 'incomplete', id, missing };
  }
  const steps = reductionSteps(test, diameter, setting.static, readings);
  const overRange = {
    air: air.kind !== 'closed' && air.overRange === true,
    static: setting.staticOverRange === true,
  };
  if (overRange.air || overRange.static) return boundOf(id, steps, overRange);
  if (steps.suction < 0) return { kind: 'impossible', id, steps };
  return { kind: 'point', id, steps, uncertainty: pointUncertainty(test, diameter, steps) };
}

function boundOf(
  id: string,
  steps: ReductionSteps,
  overRange: { readonly air: boolean; readonly static: boolean },
): ReducedSetting {
  const alone = overRange.air ? 'at most' : 'at least';
  const suction = overRange.air && overRange.static ? 'unknown' : alone;
  return { kind: 'bound', id, steps, flow: overRange.air ? 'at least' : 'exact', suction };
}
