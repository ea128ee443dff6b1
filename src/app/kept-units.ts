// The units that the reader chose, kept from visit to visit as far as the browser allows it.

import type { UnitSystem } from '../units/quantity.ts';

const KEY = 'dropcurve-units';

/**
 * The units chosen last.
 *
 * @returns the units, or undefined where none were chosen or nothing is kept
 */
export function keptUnits(): UnitSystem | undefined {
  try {
    const kept = localStorage.getItem(KEY);
    return kept === 'us' || kept === 'metric' ? kept : undefined;
  } catch {
    return undefined;
  }
}

/**
 * Keeps the units for the next visit. Where the browser refuses, nothing is lost but the choice.
 *
 * @param units - the units chosen
 */
export function keepUnits(units: UnitSystem): void {
  try {
    localStorage.setItem(KEY, units);
  } catch {
    // The next visit begins with the usual units of the place.
  }
}
