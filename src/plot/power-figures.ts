// The points of shaft power as a table that leaves the page, as exact as they are in their fields.

import type { PowerPoint } from '../curve/curve-data.ts';
import { fieldText } from '../units/format.ts';
import { unitLabel, type UnitSystem } from '../units/quantity.ts';
import type { PlotTable } from './plot-table.ts';

/**
 * Writes the table.
 *
 * @param power - points of flow [m³/s] and power [W], in the order that they are written in
 * @param units - the units to write in
 * @returns the table
 */
export function powerFigures(power: readonly PowerPoint[], units: UnitSystem): PlotTable {
  return {
    caption: 'Power over flow',
    columns: [
      { name: 'Flow', unit: unitLabel('flow', units) },
      { name: 'Power', unit: unitLabel('power', units) },
    ],
    rows: power.map((point) => [
      fieldText('flow', units, point.flow),
      fieldText('power', units, point.power),
    ]),
  };
}
