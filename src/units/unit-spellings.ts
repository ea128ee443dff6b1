// The ways in which people write each unit. Capitals, spaces, dots and the degree sign don't
// matter; `per` is a slash.
//
// Source: common practice, no source. In a pressure, plain inches mean inches of water.

import { UNITS } from './unit.ts';
import type { Dimension, Unit, UnitName } from './unit.ts';

const SPELLINGS: Readonly<Record<UnitName, readonly string[]>> = {
  cfm: ['cfm', 'ft3/min', 'cu ft/min', 'cubic feet per minute', 'acfm', 'ft3/m'],
  cubicMetrePerHour: ['m3/h', 'm3h', 'm3/hr', 'm3/hour', 'cmh', 'cbm/h'],
  cubicMetrePerMinute: ['m3/min', 'cmm'],
  cubicMetrePerSecond: ['m3/s', 'm3/sec'],
  litrePerSecond: ['l/s', 'l/sec', 'litres per second', 'liters per second'],

  footPerMinute: ['ft/min', 'fpm', 'feet/min', 'feet per minute', 'ft/m', 'lfm'],
  footPerSecond: ['ft/s', 'fps', 'feet per second', 'ft/sec'],
  milePerHour: ['mph', 'miles per hour', 'mi/h'],
  metrePerSecond: ['m/s', 'm/sec', 'mps', 'metres per second', 'meters per second'],
  kilometrePerHour: ['km/h', 'kmh', 'kph', 'km/hr'],

  inchOfWater: ['"', 'in', 'inch', 'inches'].flatMap((inch) =>
    ['', 'wg', 'wc', 'h2o', 'water', 'of water', 'water gauge', 'water column'].map(
      (water) => inch + water,
    ),
  ),
  millimetreOfWater: ['mm', 'mm wg', 'mm wc', 'mm ws', 'mm h2o', 'mm of water', 'mm water'],
  pascal: ['pa', 'pascal', 'pascals', 'n/m2'],
  hectopascal: ['hpa', 'mbar', 'millibar'],
  kilopascal: ['kpa'],

  foot: ["'", 'ft', 'foot', 'feet'],
  inch: ['"', 'in', 'ins', 'inch', 'inches'],
  metre: ['m', 'metre', 'metres', 'meter', 'meters'],
  centimetre: ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'],
  millimetre: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],

  squareFoot: ['ft2', 'sq ft', 'square feet', 'square foot', 'sqft'],
  squareMetre: ['m2', 'sq m', 'qm', 'square metres', 'square meters'],

  fahrenheit: ['f', 'deg f', 'fahrenheit', 'degrees fahrenheit'],
  celsius: ['c', 'deg c', 'celsius', 'degrees celsius', 'centigrade'],
  kelvin: ['k', 'kelvin'],

  horsepower: ['hp', 'bhp', 'horsepower'],
  watt: ['w', 'watt', 'watts'],
  kilowatt: ['kw', 'kilowatt', 'kilowatts'],

  poundPerCubicFoot: ['lb/ft3', 'lbs/ft3', 'lb/cu ft', 'pcf', 'lbm/ft3'],
  kilogramPerCubicMetre: ['kg/m3'],

  micropascalSecond: ['μpa·s', 'μpas', 'upas', 'micropascal seconds'],
  pascalSecond: ['pa·s', 'pas', 'kg/(m·s)'],

  inchOfWaterPerThousandCfm: ['in wg per 1000 cfm', '"wg per 1000 cfm', 'in/1000 cfm'],
  pascalPerThousandCubicMetrePerHour: ['pa per 1000 m3/h'],
  pascalSecondPerCubicMetre: ['pa·s/m3', 'pas/m3', 'pa/(m3/s)'],

  revolutionPerMinute: ['rev/min', 'rpm', 'r/min', '1/min', 'min-1'],
  degree: ['deg', 'degree', 'degrees'],
  plain: [],
  percent: ['%', 'percent', 'pct', 'per cent', '% rh'],
};

const BY_SPELLING: ReadonlyMap<string, readonly Unit[]> = gather();

/**
 * The unit that a spelling means where a quantity of some dimension is wanted; otherwise whatever
 * it means elsewhere. Never throws.
 * @param spelling - tidied text after a number, not empty
 * @param wanted - the dimension expected
 * @returns the unit, of the wanted dimension if there is one, or undefined
 * @example unitOfSpelling('fpm', 'velocity').label; // => 'ft/min'
 * @example unitOfSpelling('" w.g.', 'pressure').label; // => 'in. w.g.'
 */
export function unitOfSpelling(spelling: string, wanted: Dimension): Unit | undefined {
  // The sign alone is a unit only of angles; before a letter it belongs to a temperature.
  if (wanted === 'angle' && spelling.trim() === '°') return UNITS.degree;
  const units = BY_SPELLING.get(plainSpelling(spelling)) ?? [];
  return units.find((unit) => unit.dimension === wanted) ?? units[0];
}

function gather(): Map<string, Unit[]> {
  const found = new Map<string, Unit[]>();
  const entries = Object.entries(SPELLINGS) as [UnitName, readonly string[]][];
  for (const [name, spellings] of entries) {
    for (const key of new Set(spellings.map(plainSpelling))) {
      found.set(key, [...(found.get(key) ?? []), UNITS[name]]);
    }
  }
  return found;
}

function plainSpelling(spelling: string): string {
  return spelling
    .toLowerCase()
    .replace(/[\s.°^·*]/g, '')
    .replace(/per/g, '/');
}
