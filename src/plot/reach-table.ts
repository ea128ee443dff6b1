// A drop over the added length as a table.

import { formatQuantity } from '../units/format.ts';
import { unitLabel, type UnitSystem } from '../units/quantity.ts';
import type { PlotTable } from './plot-table.ts';
import type { ReachStop } from './reach-plot.ts';

/** About how many rows there are. */
const ROWS = 16;

/**
 * Writes the table.
 *
 * @param stops - the drop at each length
 * @param units - the units to write in
 * @returns the table
 */
export function reachFigures(stops: readonly ReachStop[], units: UnitSystem): PlotTable {
  const step = Math.max(1, Math.round(stops.length / ROWS));
  return {
    caption: 'The drop over the added length',
    columns: [
      { name: 'added length' },
      { name: 'air at the machine', unit: unitLabel('flow', units) },
      { name: 'slowest on its way', unit: unitLabel('velocity', units) },
    ],
    rows: stops
      .filter((_, i) => i % step === 0)
      .map(({ length, flow, slowest }) => [
        formatQuantity('length', units, length).text,
        flow === undefined ? '–' : formatQuantity('flow', units, flow).number,
        slowest === undefined ? '–' : formatQuantity('velocity', units, slowest).number,
      ]),
  };
}
