// From the pressure that was entered to the suction that the ducts get, term by term: for showing
// what each correction does, and what would be wrong without it.

import type { Air } from '../air/air.ts';
import { valueAt } from '../math/hermite.ts';
import { fanLawsFor } from './affinity.ts';
import { unitCount, unitFlow } from './arrangement.ts';
import { collectorCurve } from './collector-curve.ts';
import type { CollectorSpec } from './collector-spec.ts';
import { blindingOf, cleanResistance } from './filter-resistance.ts';
import { tapFactor } from './tap-factor.ts';

/**
 * What a term stands for, in the order in which they are taken:
 *
 * - `arrangement`: several collectors alike
 * - `density`, `speed`, `wheel`: from those of the curve to those here
 * - `tap`: the velocity pressure that a tap reads on top
 * - `separator`: what it loses, if the points don't hold it
 * - `filter`: what it loses now, less what the points hold of it
 */
export type PressureTermKind =
  | 'arrangement'
  | 'density'
  | 'speed'
  | 'wheel'
  | 'tap'
  | 'separator'
  | 'filter';

/** What one correction adds. */
export interface PressureTerm {
  readonly kind: PressureTermKind;
  /** Below zero where it takes away [Pa] */
  readonly change: number;
}

/** The way from the entered pressure to the available suction at one flow. */
export interface PressureTerms {
  /** What the entered line says at this flow, taken as it stands [Pa] */
  readonly entered: number;
  /** Only those that apply; together with `entered` they make `available`. */
  readonly terms: readonly PressureTerm[];
  /** What the ducts really get [Pa] */
  readonly available: number;
}

/**
 * The pressure at a flow as entered and as corrected, term by term. The terms of density, speed and
 * wheel are each what is added when that one is taken after those before it.
 *
 * @param spec - the collector of the shop
 * @param air - the air in the room
 * @param flow - flow at the flange, 0 or more [m³/s]
 * @returns every step [Pa]; `entered` plus all terms is `available`
 * @throws RangeError if a number is not finite or has the wrong sign
 */
export function pressureTerms(spec: CollectorSpec, air: Air, flow: number): PressureTerms {
  const { arrangement, ...alone } = spec;
  const unit = collectorCurve(alone, air);
  const count = unitCount(arrangement);
  const inSeries = arrangement?.kind === 'series' ? count : 1;
  const through = unitFlow(arrangement, flow);
  const entered = valueAt(unit.spline, flow);

  const raised = raisedPressures(spec, air, through, (at) => inSeries * valueAt(unit.spline, at));
  const scale = fanLawsFor(alone, air);
  const tap = (tapFactor(spec.curve) * scale.pressure) / scale.flow ** 2;
  const terms: PressureTerm[] = [
    { kind: 'arrangement', change: raised[0]! - entered },
    { kind: 'density', change: raised[1]! - raised[0]! },
    { kind: 'speed', change: raised[2]! - raised[1]! },
    { kind: 'wheel', change: raised[3]! - raised[2]! },
    { kind: 'tap', change: -inSeries * tap * through ** 2 },
    { kind: 'separator', change: -inSeries * (unit.quadratic - tap) * through ** 2 },
    { kind: 'filter', change: -inSeries * unit.linear * through },
  ];
  return {
    entered,
    terms: terms.filter(({ kind }) => applies(kind, spec, air)),
    available: raised[3]! - inSeries * through * (unit.quadratic * through + unit.linear),
  };
}

/** Entered pressure at the unit's flow as it stands, then with density, speed and wheel taken in. */
function raisedPressures(
  spec: CollectorSpec,
  air: Air,
  flow: number,
  read: (flow: number) => number,
): readonly number[] {
  const { speedRatio: s = 1, wheelRatio: r = 1 } = spec;
  const d = air.density / spec.curve.density;
  return [
    read(flow),
    d * read(flow),
    d * s ** 2 * read(flow / s),
    d * s ** 2 * r ** 2 * read(flow / (s * r ** 3)),
  ];
}

function applies(kind: PressureTermKind, spec: CollectorSpec, air: Air): boolean {
  switch (kind) {
    case 'arrangement':
      return unitCount(spec.arrangement) > 1;
    case 'density':
      return air.density !== spec.curve.density;
    case 'speed':
      return (spec.speedRatio ?? 1) !== 1;
    case 'wheel':
      return (spec.wheelRatio ?? 1) !== 1;
    case 'tap':
      return spec.curve.basis.kind === 'tap';
    case 'separator':
      return spec.separator.kind !== 'none' && !spec.curve.includes.separator;
    case 'filter':
      return cleanResistance(spec.filter, air.viscosity) > 0 && isFilterSeen(spec);
    default:
      return kind satisfies never;
  }
}

/** A filter that the points hold adds a term only where it is blinded, or the curve is scaled. */
function isFilterSeen({ curve, filter, speedRatio = 1, wheelRatio = 1 }: CollectorSpec): boolean {
  return !curve.includes.filter || blindingOf(filter) > 1 || speedRatio !== 1 || wheelRatio !== 1;
}
