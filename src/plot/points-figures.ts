// The points of a collector's curve as a table that leaves the page, as exact as they are in their fields.

import type { CurvePoint } from '../curve/curve-data.ts';
import { fieldText } from '../units/format.ts';
import { unitLabel, type UnitSystem } from '../units/quantity.ts';
import type { PlotTable } from './plot-table.ts';

/**
 * Writes the table.
 *
 * @param points - in the order of their flows [m³/s] and with pressures [Pa]
 * @param pressure - what the pressures are
 * @param units - the units to write in
 * @returns the table, with a remark at each point that is set aside
 */
export function pointsFigures(
  points: readonly CurvePoint[],
  pressure: string,
  units: UnitSystem,
): PlotTable {
  return {
    caption: 'Points of the curve',
    columns: [
      { name: 'Flow', unit: unitLabel('flow', units) },
      { name: pressure, unit: unitLabel('pressure', units) },
      { name: 'Remark' },
    ],
    rows: points.map((point) => [
      fieldText('flow', units, point.flow),
      fieldText('pressure', units, point.pressure),
      point.aside ? 'set aside' : '',
    ]),
  };
}
