// A quantity as text: rounded as a maker would expect, in the unit system in use.
//
// Sources:
//  1. SI Brochure, 9th edition (2019), section 5.4: a space before the unit and a thin one between
//     groups of three digits. The comma between groups in US units is common practice.
//  2. How far each is rounded: common practice, no source.

import { feetAndInches, SIXTEENTH } from './feet-inches.ts';
import { shownUnit, toDisplay } from './quantity.ts';
import type { Quantity, UnitSystem } from './quantity.ts';
import { runsToThousands } from './unit.ts';
import type { Unit } from './unit.ts';

/** A quantity ready to be shown: the unit apart, so that it can be set smaller. */
export interface FormattedQuantity {
  readonly number: string;
  readonly unit: string;
  /** Number, thin space, unit. */
  readonly text: string;
}

/** The last digit shown is worth `step`; zeros after `least` decimals are dropped. */
interface Rounding {
  readonly step: number;
  readonly decimals: number;
  readonly least: number;
}

const THIN_SPACE = '\u2009';
const NARROW_NO_BREAK_SPACE = '\u202f';
const TRUE_MINUS = '\u2212';

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
  coefficient: { us: to(3, 2), metric: to(3, 2) },
  fraction: { us: to(1, 0), metric: to(1, 0) },
};

/**
 * A quantity as number, unit and text. Lengths in US units read as on a tape, `12' 6 1/2"`,
 * and then the marks belong to the number and the unit is empty.
 * @param quantity - the kind of quantity
 * @param system - the unit system in use
 * @param si - the amount in SI, temperature in °C [SI]
 * @returns the parts and the whole
 * @throws RangeError if the amount is not finite
 * @example formatQuantity('flow', 'us', 0.5663369318).number; // => '1,200'
 * @example formatQuantity('length', 'us', 3.8227).text; // => '12\' 6 1/2"'
 * @example formatQuantity('pressure', 'metric', 498.2).unit; // => 'Pa'
 */
export function formatQuantity(
  quantity: Quantity,
  system: UnitSystem,
  si: number,
): FormattedQuantity {
  if (!Number.isFinite(si)) {
    throw new RangeError(`cannot show ${quantity} ${si}: it is not a finite number`);
  }
  if (readsAsTape(quantity, system)) {
    const text = feetAndInches(si);
    return { number: text, unit: '', text };
  }
  return inUnit(rounded(quantity, system, si), shownUnit(quantity, system), system);
}

/**
 * A number and its unit put together as text: thousands apart, true minus, thin space.
 * US units that run to thousands take a comma, metric ones a narrow no-break space; US units that
 * don't take neither, since a comma there could be a decimal one.
 * @param digits - a decimal number as JavaScript writes it
 * @param unit - the unit that it is in
 * @param system - the unit system in use
 * @returns the parts and the whole
 */
export function inUnit(digits: string, unit: Unit, system: UnitSystem): FormattedQuantity {
  const marked = system === 'metric' || runsToThousands(unit);
  const number = (marked ? groupDigits(digits, system) : digits).replace('-', TRUE_MINUS);
  const { label } = unit;
  return { number, unit: label, text: label === '' ? number : `${number}${THIN_SPACE}${label}` };
}

/**
 * A quantity as it should stand in a field that is about to be edited: rounded alike, but with no
 * marks between thousands and a plain hyphen for minus, so that it reads back without doubt.
 * @param quantity - the kind of quantity
 * @param system - the unit system in use
 * @param si - the amount in SI, temperature in °C [SI]
 * @returns the number, without its unit
 * @throws RangeError if the amount is not finite
 * @example fieldText('flow', 'us', 0.5663369318); // => '1200'
 */
export function fieldText(quantity: Quantity, system: UnitSystem, si: number): string {
  const { number } = formatQuantity(quantity, system, si);
  const text = readsAsTape(quantity, system) ? number : rounded(quantity, system, si);
  return text.replace(TRUE_MINUS, '-');
}

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
 * Marks between the thousands: a comma in the US system, a narrow no-break space in the metric one.
 * @param digits - a decimal number as JavaScript writes it
 * @param system - the unit system in use
 * @returns the number with the digits before its decimal point in groups
 * @example groupDigits('1234567.8912', 'us'); // => '1,234,567.8912'
 */
export function groupDigits(digits: string, system: UnitSystem): string {
  const mark = system === 'us' ? ',' : NARROW_NO_BREAK_SPACE;
  const [whole = '', ...decimals] = digits.split('.');
  return [whole.replace(/\B(?=(\d{3})+$)/g, mark), ...decimals].join('.');
}

function readsAsTape(quantity: Quantity, system: UnitSystem): boolean {
  return quantity === 'length' && system === 'us';
}

function rounded(quantity: Quantity, system: UnitSystem, si: number): string {
  const { step, decimals, least } = ROUNDINGS[quantity][system];
  const shown = toDisplay(quantity, system, si);
  const stepped = step > 1 ? Math.round(shown / step) * step : shown;
  const text = trimZeros(stepped.toFixed(decimals), decimals - least);
  return Number(text) === 0 ? text.replace('-', '') : text;
}

function trimZeros(text: string, atMost: number): string {
  return atMost === 0 ? text : text.replace(new RegExp(`0{1,${atMost}}$`), '').replace(/\.$/, '');
}
