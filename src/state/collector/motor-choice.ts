// Another way to say what power the wheel takes.

import { shaftPower } from '../../curve/shaft-power.ts';
import { usedPoints } from '../../curve/used-points.ts';
import type { Curve } from '../../shop/schema/curve-schema.ts';

/** The ways in which the power is known. */
export type MotorKind = 'unknown' | 'efficiency' | 'points';

/** The ways with their words, in the order in which they are offered. */
export const MOTOR_KINDS: readonly { readonly value: MotorKind; readonly words: string }[] = [
  { value: 'unknown', words: 'not at all' },
  { value: 'efficiency', words: 'by the efficiency of the fan' },
  { value: 'points', words: 'by points of power against flow' },
];
/** A plain radial wheel of a small collector [-] (common practice, no source). */
const USUAL_EFFICIENCY = 0.45;
const AIR = { pressure: 101_325, viscosity: 1.81e-5 } as const;

/**
 * How the power of a curve is known. Points come before an efficiency, as in the reckoning.
 *
 * @param curve - the curve
 * @returns the way
 */
export function motorKind(curve: Curve): MotorKind {
  if (curve.power !== undefined) return 'points';
  return curve.efficiency === undefined ? 'unknown' : 'efficiency';
}

/**
 * The curve with its power known in another way. Points begin as what the efficiency says at the ends.
 *
 * @param curve - as it is
 * @param kind - how its power is to be known
 * @returns the curve
 */
export function motorAs(curve: Curve, kind: MotorKind): Curve {
  if (kind === motorKind(curve)) return curve;
  const { power: _power, efficiency, ...bare } = curve;
  switch (kind) {
    case 'unknown':
      return bare;
    case 'efficiency':
      return { ...bare, efficiency: efficiency ?? USUAL_EFFICIENCY };
    case 'points': {
      const by = { ...bare, efficiency: efficiency ?? USUAL_EFFICIENCY };
      const flows = usedPoints(curve).map(({ flow }) => flow);
      const ends = [...new Set([Math.min(...flows), Math.max(...flows)])].toSorted((a, b) => a - b);
      return { ...by, power: ends.map((flow) => ({ flow, power: powerBy(by, flow) })) };
    }
    default:
      return kind satisfies never;
  }
}

/** At the conditions of the curve [W]. */
function powerBy(curve: Curve, flow: number): number {
  const spec = { curve, filter: { kind: 'none' }, separator: { kind: 'none' } } as const;
  const power = shaftPower(spec, { ...AIR, density: curve.density }, flow);
  return power.kind === 'known' ? Number(power.power.toPrecision(4)) : 0;
}
