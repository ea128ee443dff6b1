// The entry loss of a hood of the document, on the velocity pressure in its port.

import { type Coefficient, plainCoefficient } from '../duct/coefficient.ts';
import { findHood, measuredHood } from '../duct/hood.ts';
import type { Hood } from './schema/drop-schema.ts';

/** An entry loss, or why the document gives none. */
export type HoodLoss =
  | { readonly kind: 'found'; readonly coefficient: Coefficient }
  | { readonly kind: 'unknown hood' }
  /** The measured suction is less than the velocity pressure [Pa] at the measured speed. */
  | { readonly kind: 'below velocity pressure'; readonly velocityPressure: number };

/**
 * The entry loss of a hood. A measured hood is taken as measured in air of this density.
 *
 * @param hood - the hood as the document states it
 * @param density - density of the air in the shop [kg/m³]
 * @returns coefficient on the velocity pressure in the port [-], or why there is none
 */
export function hoodLoss(hood: Hood, density: number): HoodLoss {
  if (hood.kind === 'measured') return measuredHood(hood.suction, hood.velocity, density);
  const entry = hood.kind === 'table' ? findHood(hood.id) : hood;
  if (entry === undefined) return { kind: 'unknown hood' };
  return { kind: 'found', coefficient: plainCoefficient(entry.coefficient) };
}
