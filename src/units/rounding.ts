// How far each quantity is rounded when it is shown.
//
// Source: none; what a maker expects to read on a gauge, a tape or a chart (common practice).

import { SIXTEENTH } from './feet-inches.ts';
import { shownUnit, toDisplay } from './quantity.ts';
import type { Quantity, UnitSystem } from './quantity.ts';

/** The last digit shown is worth `step`; zeros after `least` decimals are dropped. */
interface Rounding {
  readonly step: number;
  readonly decimals: number;
  readonly least: number;
}

const to = (decimals: number, least = decimals): Rounding => ({
  step: 10 ** -decimals,
  decimals,
  least,
});
const nearestTen: Rounding = { step: 10, decimals: 0, least: 0 };

const ROUNDINGS: Readonly<Record<Quantity, Readonly<Record<UnitSystem, Rounding>>>> = {
  flow: { us: to(0), metric: to(0) },
  velocity: { us: nearestTen, metric: to(1) },
  pressure: { us: to(2), metric: to(0) },
  length: { us: to(2), metric: to(3, 2) },
  diameter: { us: to(2, 0), metric: to(1, 0) },
  temperature: { us: to(1, 0), metric: to(1, 0) },
  altitude: { us: to(0), metric: to(0) },
  power: { us: to(2, 0), metric: to(2, 1) },
  density: { us: to(4), metric: to(3) },
  viscosity: { us: to(2, 1), metric: to(2, 1) },
  area: { us: to(1, 0), metric: to(2, 0) },
  roughness: { us: to(5, 3), metric: to(4, 2) },
  resistance: { us: to(2), metric: to(0) },
  rotation: { us: to(0), metric: to(0) },
  angle: { us: to(1, 0), metric: to(1, 0) },
  count: { us: to(0), metric: to(0) },
  coefficient: { us: to(3, 2), metric: to(3, 2) },
  fraction: { us: to(1, 0), metric: to(1, 0) },
};

/**
 * What the last digit shown is worth.
 * @param quantity - the kind of quantity
 * @param system - the unit system in use
 * @returns the step between two numbers that can be shown, in SI; for temperature a difference [SI]
 * @example lastDigit('velocity', 'us'); // => 0.0508
 */
export function lastDigit(quantity: Quantity, system: UnitSystem): number {
  if (readsAsTape(quantity, system)) {
    return SIXTEENTH;
  }
  return ROUNDINGS[quantity][system].step * shownUnit(quantity, system).size;
}

/**
 * Whether a quantity is shown in feet and inches instead of a decimal number.
 * @param quantity - the kind of quantity
 * @param system - the unit system in use
 * @returns true for a length in US units
 * @example readsAsTape('length', 'us'); // => true
 */
export function readsAsTape(quantity: Quantity, system: UnitSystem): boolean {
  return quantity === 'length' && system === 'us';
}

/**
 * An amount in its shown unit, rounded, as plain digits. Never `-0`.
 * @param quantity - the kind of quantity
 * @param system - the unit system in use
 * @param si - the amount in SI, finite, temperature in °C [SI]
 * @returns the digits, without marks between thousands
 * @example roundedDigits('velocity', 'us', 20.3); // => '4000'
 * @example roundedDigits('length', 'metric', 2.4); // => '2.40'
 */
export function roundedDigits(quantity: Quantity, system: UnitSystem, si: number): string {
  const { step, decimals, least } = ROUNDINGS[quantity][system];
  const shown = toDisplay(quantity, system, si);
  const stepped = step > 1 ? Math.round(shown / step) * step : shown;
  const text = trimZeros(stepped.toFixed(decimals), decimals - least);
  return Number(text) === 0 ? text.replace('-', '') : text;
}

function trimZeros(text: string, atMost: number): string {
  return atMost === 0 ? text : text.replace(new RegExp(`0{1,${atMost}}$`), '').replace(/\.$/, '');
}
