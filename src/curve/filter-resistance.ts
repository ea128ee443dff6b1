// How much a clean filter resists: pressure over flow, a constant as long as the flow through the
// media is slow enough to be laminar.
// Sources:
// 1. H. Darcy, Les fontaines publiques de la ville de Dijon (1856): loss ∝ viscosity × flow.
// 2. ASTM D737, air permeability of textile fabrics: velocity through the media at a fixed
//    pressure (from memory, unverified).

import { sutherlandViscosity } from '../air/viscosity.ts';
import type { FilterSpec } from './collector-spec.ts';
import { notNegative, positive } from './guard.ts';

/** Viscosity of the air that a resistance is stated for, unless it says otherwise [Pa·s]. */
export const TEST_VISCOSITY = sutherlandViscosity(20);

/**
 * Resistance of the filter while it is clean, in air of the given viscosity.
 *
 * - from a resistance: as stated
 * - from a media test: (testPressure / testVelocity) / area
 * - from one measured pair: pressure / flow
 *
 * each times viscosity / stated viscosity. Its loss is this times the flow.
 *
 * @param filter - what is known of the filter
 * @param viscosity - viscosity of the air that goes through it [Pa·s]
 * @returns resistance [Pa·s/m³], 0 without a filter
 * @throws RangeError if a number is not finite, is below zero, or is zero where it divides
 */
export function cleanResistance(filter: FilterSpec, viscosity: number): number {
  const running = positive('viscosity', viscosity);
  const stated = filter.kind === 'resistance' ? filter.viscosity : undefined;
  const ratio = running / positive('viscosity of the filter test', stated ?? TEST_VISCOSITY);
  return ratio * statedResistance(filter);
}

/**
 * By what the resistance of the clean filter is multiplied now.
 *
 * @param filter - what is known of the filter
 * @returns blinding [-], 1 if clean or if nothing is said
 * @throws RangeError if it is not above zero
 * @example
 * blindingOf({ kind: 'measured', flow: 0.4, pressure: 50 }); // => 1
 * blindingOf({ kind: 'measured', flow: 0.4, pressure: 50, blinding: 3 }); // => 3
 */
export function blindingOf(filter: FilterSpec): number {
  return filter.kind === 'none' ? 1 : positive('blinding', filter.blinding ?? 1);
}

function statedResistance(filter: FilterSpec): number {
  switch (filter.kind) {
    case 'none':
      return 0;
    case 'resistance':
      return notNegative('filter resistance', filter.resistance);
    case 'media':
      return (
        notNegative('test pressure of the media', filter.testPressure) /
        positive('test velocity of the media', filter.testVelocity) /
        positive('media area', filter.area)
      );
    case 'measured':
      return notNegative('filter pressure', filter.pressure) / positive('flow', filter.flow);
    default:
      return filter satisfies never;
  }
}
