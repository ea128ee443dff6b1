// A quantity as text: rounded as a maker would expect, in the unit system in use.
//
// Source: SI Brochure, 9th edition (2019), section 5.4: a space before the unit and a thin one
// between groups of three digits. The comma between groups in US units is common practice.

import { feetAndInches } from './feet-inches.ts';
import { shownUnit } from './quantity.ts';
import type { Quantity, UnitSystem } from './quantity.ts';
import { readsAsTape, roundedDigits } from './rounding.ts';
import { runsToThousands } from './unit.ts';
import type { Unit } from './unit.ts';

/** A quantity ready to be shown: the unit apart, so that it can be set smaller. */
export interface FormattedQuantity {
  readonly number: string;
  readonly unit: string;
  /** Number, thin space, unit. */
  readonly text: string;
}

const THIN_SPACE = '\u2009';
const NARROW_NO_BREAK_SPACE = '\u202f';
const TRUE_MINUS = '\u2212';

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
  return inUnit(roundedDigits(quantity, system, si), shownUnit(quantity, system), system);
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
  const text = readsAsTape(quantity, system) ? number : roundedDigits(quantity, system, si);
  return text.replace(TRUE_MINUS, '-');
}

/** A comma in the US system, a narrow no-break space in the metric one. */
function groupDigits(digits: string, system: UnitSystem): string {
  if (!/\d{4}/.test(digits)) return digits;
  const mark = system === 'us' ? ',' : NARROW_NO_BREAK_SPACE;
  const [whole = '', ...decimals] = digits.split('.');
  return [whole.replace(/\B(?=(\d{3})+$)/g, mark), ...decimals].join('.');
}
