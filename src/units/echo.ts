// Saying back what was understood: as typed, and in the shown unit if that is another one.
//
// Source: none.

import { SIXTEENTH } from './feet-inches.ts';
import { formatQuantity, inUnit } from './format.ts';
import { shownUnit } from './quantity.ts';
import type { Quantity, UnitSystem } from './quantity.ts';
import { UNITS } from './unit.ts';
import type { Unit } from './unit.ts';

/** One number, no longer open, in its unit. */
export interface ReadTerm {
  readonly number: number;
  readonly unit: Unit;
}

/**
 * Says back an amount: `1,200 cfm`; `150 mm (5.91 in.)`; a length typed in feet or inches as the
 * tape reads it.
 * @param quantity - the kind of quantity
 * @param system - the unit system in use
 * @param terms - the numbers as typed, each with its unit
 * @param si - what they amount to, finite, temperature in °C [SI]
 * @returns the text
 */
export function echoOf(
  quantity: Quantity,
  system: UnitSystem,
  terms: readonly ReadTerm[],
  si: number,
): string {
  const typed = terms
    .map(({ number, unit }) => inUnit(String(Number(number.toPrecision(12))), unit, system).text)
    .join(' ');
  const shown = formatQuantity(quantity, system, si).text;
  const single = terms.length === 1 ? terms[0] : undefined;
  if (quantity === 'length' && system === 'us') {
    return terms.every(onTape) && wholeSixteenths(si) ? shown : `${typed} (${shown})`;
  }
  return single?.unit === shownUnit(quantity, system) ? typed : `${typed} (${shown})`;
}

function onTape({ unit }: ReadTerm): boolean {
  return unit === UNITS.foot || unit === UNITS.inch;
}

function wholeSixteenths(length: number): boolean {
  const count = length / SIXTEENTH;
  return Math.abs(count - Math.round(count)) < 1e-6;
}
