// The kinds of quantity that the program speaks of, and the unit each is shown in.
// Inside, everything is SI; these functions are the only way in and out.
//
// Source: the units are those of the trade on either side of the Atlantic (common practice).

import { fromSi, toSi, UNITS } from './unit.ts';
import type { Unit, UnitName } from './unit.ts';

/** The two unit systems offered. */
export type UnitSystem = 'us' | 'metric';

/**
 * For each kind of quantity, what it is called in a sentence, the unit shown in either system
 * (also the unit of a plain number typed), and a typical amount in SI to give as an example.
 */
const QUANTITIES = {
  flow: kind('a flow', 'cfm', 'cubicMetrePerHour', 0.4),
  velocity: kind('a speed of air', 'footPerMinute', 'metrePerSecond', 20.32),
  pressure: kind('a pressure', 'inchOfWater', 'pascal', 2000),
  length: kind('a length', 'foot', 'metre', 3.8227),
  diameter: kind('a diameter', 'inch', 'millimetre', 0.1524),
  temperature: kind('a temperature', 'fahrenheit', 'celsius', 20),
  altitude: kind('a height above the sea', 'foot', 'metre', 1100),
  power: kind('a power', 'horsepower', 'kilowatt', 2237.1),
  density: kind('a density', 'poundPerCubicFoot', 'kilogramPerCubicMetre', 1.201385),
  viscosity: kind('a viscosity', 'micropascalSecond', 'micropascalSecond', 1.81e-5),
  area: kind('an area', 'squareFoot', 'squareMetre', 6),
  roughness: kind('a roughness', 'inch', 'millimetre', 9e-5),
  resistance: kind(
    'a filter resistance',
    'inchOfWaterPerThousandCfm',
    'pascalPerThousandCubicMetrePerHour',
    500,
  ),
  rotation: kind('a speed of rotation', 'revolutionPerMinute', 'revolutionPerMinute', 3450),
  angle: kind('an angle', 'degree', 'degree', 45),
  count: kind('a whole number', 'plain', 'plain', 2),
  coefficient: kind('a plain number', 'plain', 'plain', 0.33),
  fraction: kind('a percentage', 'percent', 'percent', 0.45),
} as const satisfies Record<string, Kind>;

interface Kind {
  readonly words: string;
  readonly us: UnitName;
  readonly metric: UnitName;
  readonly typical: number;
}

/** A kind of quantity. */
export type Quantity = keyof typeof QUANTITIES;

/** Every kind of quantity there is. */
export const QUANTITY_NAMES = Object.keys(QUANTITIES) as readonly Quantity[];

/**
 * The unit that a quantity is shown in, and that a plain number typed is taken to be in.
 * @param quantity - the kind of quantity
 * @param system - the unit system in use
 * @returns the unit
 */
export function shownUnit(quantity: Quantity, system: UnitSystem): Unit {
  return UNITS[QUANTITIES[quantity][system]];
}

/**
 * The label of the unit that a quantity is shown in.
 * @param quantity - the kind of quantity
 * @param system - the unit system in use
 * @returns the label, empty for a plain number
 * @example unitLabel('flow', 'us'); // => 'cfm'
 * @example unitLabel('diameter', 'metric'); // => 'mm'
 */
export function unitLabel(quantity: Quantity, system: UnitSystem): string {
  return shownUnit(quantity, system).label;
}

/**
 * From SI to the unit shown, not rounded. Undone by `fromDisplay` but for floating-point rounding.
 * @param quantity - the kind of quantity
 * @param system - the unit system in use
 * @param si - the amount in SI, temperature in °C [SI]
 * @returns the number in the shown unit [shown unit]
 * @example toDisplay('velocity', 'us', 20.32); // => 4000
 * @example toDisplay('temperature', 'us', -40); // => -40
 */
export function toDisplay(quantity: Quantity, system: UnitSystem, si: number): number {
  return fromSi(shownUnit(quantity, system), si);
}

/**
 * From the unit shown to SI.
 * @param quantity - the kind of quantity
 * @param system - the unit system in use
 * @param shown - the number in the shown unit [shown unit]
 * @returns the amount in SI, temperature in °C [SI]
 * @example fromDisplay('pressure', 'us', 1); // => 249.08891
 * @example fromDisplay('flow', 'metric', 3600); // => 1
 */
export function fromDisplay(quantity: Quantity, system: UnitSystem, shown: number): number {
  return toSi(shownUnit(quantity, system), shown);
}

/**
 * A quantity in words, with its article, for a sentence.
 * @param quantity - the kind of quantity
 * @returns for example `a flow`
 * @example quantityWords('altitude'); // => 'a height above the sea'
 */
export function quantityWords(quantity: Quantity): string {
  return QUANTITIES[quantity].words;
}

/**
 * An amount that a small shop might meet, to show how a quantity may be typed.
 * @param quantity - the kind of quantity
 * @returns the amount in SI, temperature in °C [SI]
 * @example typicalAmount('pressure'); // => 2000
 */
export function typicalAmount(quantity: Quantity): number {
  return QUANTITIES[quantity].typical;
}

function kind(words: string, us: UnitName, metric: UnitName, typical: number): Kind {
  return { words, us, metric, typical };
}
