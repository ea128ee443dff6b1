// Every drop over the size of the main as a table.

import type { MainSeries } from '../../plot/main-multiples.ts';
import type { PlotTable } from '../../plot/plot-table.ts';
import { formatQuantity } from '../../units/format.ts';
import { unitLabel, type UnitSystem } from '../../units/quantity.ts';

/**
 * Writes the table: a row for each drop and size.
 *
 * @param series - the drops
 * @param sizes - names of the sizes
 * @param units - the units to write in
 * @returns the table
 */
export function mainFigures(
  series: readonly MainSeries[],
  sizes: readonly string[],
  units: UnitSystem,
): PlotTable {
  return {
    caption: 'Every drop over the size of the main',
    columns: [
      { name: 'drop, alone' },
      { name: 'main of' },
      { name: 'air', unit: unitLabel('flow', units) },
      { name: 'slowest in the main', unit: unitLabel('velocity', units) },
    ],
    rows: series.flatMap(({ name, stops }) =>
      stops.map(({ flow, speed }, k) => [
        name,
        sizes[k] ?? '',
        formatQuantity('flow', units, flow).number,
        speed === undefined ? '–' : formatQuantity('velocity', units, speed).number,
      ]),
    ),
  };
}
