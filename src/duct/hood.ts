// A hood: what the air loses on its way in, and what a manometer shows just behind it.
//
// 1. ACGIH, Industrial Ventilation, hood loss coefficients; shared/hoods.json holds them.
// 2. The same: hood static pressure SP_h = (1 + F_h)·VP; coefficient of entry Ce = 1/√(1 + F_h).
// The acceleration, the 1 of (1 + F_h), is not lost: in total pressure it is still in the air.

import hoods from '../../shared/hoods.json' with { type: 'json' };
import { velocityPressure } from '../air/velocity-pressure.ts';
import { type Coefficient, plainCoefficient } from './coefficient.ts';
import { type Provenance, provenanceOf } from './provenance.ts';

/** A hood of the table. */
export interface TableHood {
  readonly id: string;
  readonly name: string;
  /** Entry loss F_h on the velocity pressure of the port's pipe [-] */
  readonly coefficient: number;
  readonly source: Provenance;
}

/** Every hood of the table, in its order. */
export const HOODS: readonly TableHood[] = hoods.rows.map((row) => ({
  id: row.id,
  name: row.name,
  coefficient: row.coefficient,
  source: provenanceOf(row, hoods.sources),
}));

/**
 * A hood of the table.
 *
 * @param id - such as 'plain-end'
 * @returns the hood, or undefined if the table does not have it
 * @example
 * findHood('plain-end')?.coefficient; // => 0.93
 */
export function findHood(id: string): TableHood | undefined {
  return HOODS.find((hood) => hood.id === id);
}

/** What a measured hood comes to: its entry loss, or why there is none. */
export type MeasuredHood =
  | { readonly kind: 'found'; readonly coefficient: Coefficient }
  /** The suction can't be below the velocity pressure [Pa]; one of the readings is wrong. */
  | { readonly kind: 'below velocity pressure'; readonly velocityPressure: number };

/**
 * The entry loss from a hood static pressure and a mean speed measured together: SP_h/VP − 1.
 *
 * @param suction - static suction just behind the hood, 0 or more [Pa]
 * @param velocity - mean speed there, above 0 [m/s]
 * @param density - density of the air when it was measured, above 0 [kg/m³]
 * @returns coefficient on the velocity pressure there [-], or that the readings contradict
 * @throws RangeError if an argument is outside its range
 * @example
 * measuredHood(480, 20, 1.2); // => { kind: 'found', coefficient: { fixed: 1, frictional: 0 } }
 */
export function measuredHood(suction: number, velocity: number, density: number): MeasuredHood {
  if (!(suction >= 0)) throw new RangeError(`suction must be 0 or more, not ${suction}`);
  if (!(velocity > 0)) throw new RangeError(`velocity must be above 0, not ${velocity}`);
  if (!(density > 0)) throw new RangeError(`density must be above 0, not ${density}`);
  const pressure = velocityPressure(density, velocity);
  if (suction < pressure) return { kind: 'below velocity pressure', velocityPressure: pressure };
  return { kind: 'found', coefficient: plainCoefficient(suction / pressure - 1) };
}

/**
 * What a manometer shows just behind a hood, as positive suction: (1 + F_h)·VP.
 *
 * @param entryLoss - F_h, 0 or more [-]
 * @param pressure - velocity pressure in the port's pipe, 0 or more [Pa]
 * @returns hood static pressure, as suction [Pa]
 * @example
 * hoodStaticPressure(0.5, 200); // => 300
 */
export function hoodStaticPressure(entryLoss: number, pressure: number): number {
  return (1 + entryLoss) * pressure;
}

/**
 * Coefficient of entry, the flow over that of a hood without loss: 1/√(1 + F_h).
 *
 * @param entryLoss - F_h, above −1 [-]
 * @returns coefficient of entry [-]
 * @throws RangeError if the entry loss is not above −1
 * @example
 * coefficientOfEntry(0.5625); // => 0.8
 */
export function coefficientOfEntry(entryLoss: number): number {
  if (!(entryLoss > -1)) throw new RangeError(`entry loss must be above -1, not ${entryLoss}`);
  return 1 / Math.sqrt(1 + entryLoss);
}

/**
 * Entry loss of a hood from its coefficient of entry: 1/Ce² − 1.
 *
 * @param entry - coefficient of entry, above 0 to 1 [-]
 * @returns coefficient on the velocity pressure of the port's pipe [-]
 * @throws RangeError if it is not above 0 to 1
 * @example
 * hoodOfEntryCoefficient(0.8).fixed; // => 0.5625
 */
export function hoodOfEntryCoefficient(entry: number): Coefficient {
  if (!(entry > 0 && entry <= 1)) {
    throw new RangeError(`a coefficient of entry must be above 0 to 1, not ${entry}`);
  }
  return plainCoefficient(1 / (entry * entry) - 1);
}
