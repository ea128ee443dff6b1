// The points of the collectors on the ducts as a table.

import type { CollectorsLines } from '../../plot/collectors-plot.ts';
import type { PlotTable } from '../../plot/plot-table.ts';
import { ORIGIN_WORDS } from '../../state/decisions/candidates.ts';
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
  const flow = unitLabel('flow', units);
  const number = (quantity: 'flow' | 'pressure', si: number | undefined) =>
    si === undefined ? '–' : formatQuantity(quantity, units, si).number;
  return {
    caption: 'Where each collector meets the ducts; at least and at most are of 9 in 10 cases',
    columns: [
      { name: 'collector' },
      { name: 'whose curve' },
      { name: 'air flow', unit: flow },
      { name: 'at least', unit: flow },
      { name: 'at most', unit: flow },
      { name: 'suction', unit: unitLabel('pressure', units) },
    ],
    rows: collectors.map(({ name, origin, point, pointDoubt }) => [
      name,
      ORIGIN_WORDS[origin],
      number('flow', point?.flow),
      number('flow', pointDoubt?.flow.low),
      number('flow', pointDoubt?.flow.high),
      number('pressure', point?.suction),
    ]),
  };
}
