// The one table of units that the program can read or show, each with its size in SI.
// Temperature is held in °C, as the shop document does, so °F and K carry an offset. So are angles
// in degrees: what is shown and typed is the document's number, never the core's radians.
//
// Sources:
//  1. NIST Special Publication 811 (2008), appendix B: foot, pound, horsepower, exact or to
//     the digits given there.
//  2. Inch of water: 249.08891 Pa, water at 4 °C (as in ANSI/AMCA 210; its pair of constants
//     1097.8 and 6343.3 follows from it).

/** What a unit measures. Several quantities may share one dimension: a diameter is a length. */
export type Dimension =
  | 'flow'
  | 'velocity'
  | 'pressure'
  | 'length'
  | 'area'
  | 'temperature'
  | 'power'
  | 'density'
  | 'viscosity'
  | 'resistance'
  | 'rotation'
  | 'angle'
  | 'ratio'
  | 'fraction';

/** A unit: `si = (shown + offset) · size`. */
export interface Unit {
  readonly label: string;
  readonly dimension: Dimension;
  readonly size: number;
  readonly offset: number;
}

const FOOT = 0.3048;
const INCH = 0.0254;
const POUND = 0.45359237;
const INCH_OF_WATER = 249.08891;
const CFM = FOOT ** 3 / 60;
const HORSEPOWER = 550 * POUND * 9.80665 * FOOT;

const unit = (dimension: Dimension, label: string, size: number, offset = 0): Unit => ({
  label,
  dimension,
  size,
  offset,
});

export const UNITS = {
  cfm: unit('flow', 'cfm', CFM),
  cubicMetrePerHour: unit('flow', 'm³/h', 1 / 3600),
  cubicMetrePerMinute: unit('flow', 'm³/min', 1 / 60),
  cubicMetrePerSecond: unit('flow', 'm³/s', 1),
  litrePerSecond: unit('flow', 'L/s', 1e-3),

  footPerMinute: unit('velocity', 'ft/min', FOOT / 60),
  footPerSecond: unit('velocity', 'ft/s', FOOT),
  milePerHour: unit('velocity', 'mph', (5280 * FOOT) / 3600),
  metrePerSecond: unit('velocity', 'm/s', 1),
  kilometrePerHour: unit('velocity', 'km/h', 1 / 3.6),

  inchOfWater: unit('pressure', 'in. w.g.', INCH_OF_WATER),
  millimetreOfWater: unit('pressure', 'mm w.g.', INCH_OF_WATER / 25.4),
  pascal: unit('pressure', 'Pa', 1),
  hectopascal: unit('pressure', 'hPa', 100),
  kilopascal: unit('pressure', 'kPa', 1000),

  foot: unit('length', 'ft', FOOT),
  inch: unit('length', 'in.', INCH),
  metre: unit('length', 'm', 1),
  centimetre: unit('length', 'cm', 0.01),
  millimetre: unit('length', 'mm', 0.001),

  squareFoot: unit('area', 'ft²', FOOT ** 2),
  squareMetre: unit('area', 'm²', 1),

  fahrenheit: unit('temperature', '°F', 5 / 9, -32),
  celsius: unit('temperature', '°C', 1),
  kelvin: unit('temperature', 'K', 1, -273.15),

  horsepower: unit('power', 'hp', HORSEPOWER),
  watt: unit('power', 'W', 1),
  kilowatt: unit('power', 'kW', 1000),

  poundPerCubicFoot: unit('density', 'lb/ft³', POUND / FOOT ** 3),
  kilogramPerCubicMetre: unit('density', 'kg/m³', 1),

  micropascalSecond: unit('viscosity', 'µPa·s', 1e-6),
  pascalSecond: unit('viscosity', 'Pa·s', 1),

  inchOfWaterPerThousandCfm: unit(
    'resistance',
    'in. w.g. per 1000 cfm',
    INCH_OF_WATER / (1000 * CFM),
  ),
  pascalPerThousandCubicMetrePerHour: unit('resistance', 'Pa per 1000 m³/h', 3.6),
  pascalSecondPerCubicMetre: unit('resistance', 'Pa·s/m³', 1),

  revolutionPerMinute: unit('rotation', 'rev/min', 1),
  degree: unit('angle', '°', 1),
  plain: unit('ratio', '', 1),
  percent: unit('fraction', '%', 0.01),
} as const satisfies Record<string, Unit>;

/** The name of a unit in the table. */
export type UnitName = keyof typeof UNITS;

/** Units whose numbers run to thousands, where US custom puts a comma between the groups. */
const THOUSANDS: ReadonlySet<Unit> = new Set<Unit>([
  UNITS.cfm,
  UNITS.footPerMinute,
  UNITS.foot,
  UNITS.squareFoot,
  UNITS.revolutionPerMinute,
]);

/**
 * Whether a comma in a number with this unit is sure to mark thousands: `1,200 cfm`.
 * @param unit - the unit, as named by the writer
 * @returns true for the US customary units in which thousands are met
 * @example runsToThousands(UNITS.cfm); // => true
 * @example runsToThousands(UNITS.metre); // => false
 */
export function runsToThousands(unit: Unit): boolean {
  return THOUSANDS.has(unit);
}

/**
 * From a number in a unit to SI.
 * @param unit - the unit that the number is in
 * @param shown - the number as written, in that unit [shown unit]
 * @returns the same amount in SI, temperature in °C [SI]
 * @example toSi(UNITS.cfm, 1000); // => 0.4719474432
 * @example toSi(UNITS.fahrenheit, 68); // => 20
 */
export function toSi(unit: Unit, shown: number): number {
  return (shown + unit.offset) * unit.size;
}

/**
 * From SI to a number in a unit.
 * @param unit - the unit wanted
 * @param si - the amount in SI, temperature in °C [SI]
 * @returns the same amount in the unit [shown unit]
 * @example fromSi(UNITS.inchOfWater, 249.08891); // => 1
 * @example fromSi(UNITS.fahrenheit, 20); // => 68
 */
export function fromSi(unit: Unit, si: number): number {
  return si / unit.size - unit.offset;
}
