// Amounts of an axis in the unit that the chart is written in.

import { formatQuantity, inUnit } from '../../units/format.ts';
import { unitLabel, type UnitSystem } from '../../units/quantity.ts';
import { fromSi, UNITS } from '../../units/unit.ts';
import type { AxisName } from './chart-mapping.ts';
import type { TracedAxis } from './traced-chart.ts';

/**
 * The unit of an axis.
 *
 * @param axis - the axis
 * @param name - which it is
 * @param units - the units of the page, which hold where the axis has none of its own
 * @returns its label
 */
export function unitWords({ unit }: TracedAxis, name: AxisName, units: UnitSystem): string {
  return unit ? UNITS[unit].label : unitLabel(name, units);
}

/**
 * An amount on an axis.
 *
 * @param axis - the axis
 * @param name - which it is
 * @param value - flow [m³/s] or pressure [Pa]
 * @param units - the units of the page
 * @returns the number and its unit
 */
export function amountWords(
  { unit }: TracedAxis,
  name: AxisName,
  value: number,
  units: UnitSystem,
): string {
  if (!unit) return formatQuantity(name, units, value).text;
  return inUnit(String(Number(fromSi(UNITS[unit], value).toPrecision(6))), UNITS[unit], units).text;
}
