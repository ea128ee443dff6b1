// The points of the collectors on the ducts as a table.

import type { CollectorsLines } from '../../plot/collectors-plot.ts';
import type { PlotTable } from '../../plot/plot-table.ts';
import { formatQuantity } from '../../units/format.ts';
import { unitLabel, type UnitSystem } from '../../units/quantity.ts';

/**
 * Writes the table.
 *
 * @param lines - the collectors with their points
 * @param units - the units to write in
 * @returns a row for each collector
 */
export function collectorFigures({ collectors }: CollectorsLines, units: UnitSystem): PlotTable {
  return {
    caption: 'Where each collector meets the ducts',
    columns: [
      { name: 'collector' },
      { name: 'air flow', unit: unitLabel('flow', units) },
      { name: 'suction', unit: unitLabel('pressure', units) },
    ],
    rows: collectors.map(({ name, point }) => [
      name,
      point === undefined ? '–' : formatQuantity('flow', units, point.flow).number,
      point === undefined ? '–' : formatQuantity('pressure', units, point.suction).number,
    ]),
  };
}
