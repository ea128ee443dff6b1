// The operating-point plot as a table: both lines at round flows, and a row for the point.

import { formatQuantity } from '../units/format.ts';
import { unitLabel, type UnitSystem } from '../units/quantity.ts';
import { asking, curveRemark, given, type OperatingLines, roundFlows } from './operating-lines.ts';
import type { PlotTable } from './plot-table.ts';

/** About how many rows there are. */
const ROWS = 16;

/**
 * Writes the table.
 *
 * @param lines - both lines by value
 * @param end - where the flow axis ends, above 0 [m³/s]
 * @param units - the units to write in
 * @returns the table
 */
export function operatingTable(lines: OperatingLines, end: number, units: UnitSystem): PlotTable {
  const pressure = unitLabel('pressure', units);
  const ask = asking(lines);
  const write = (suction: number | undefined) =>
    suction === undefined ? '–' : formatQuantity('pressure', units, suction).number;
  return {
    caption: `Suction over flow: ${lines.collector}, and the ducts as open now`,
    columns: [
      { name: 'air flow', unit: unitLabel('flow', units) },
      { name: 'collector gives', unit: pressure },
      { name: 'ducts ask', unit: pressure },
      { name: 'remark' },
    ],
    rows: roundFlows(units, end, ROWS, lines.point).map((flow) => [
      formatQuantity('flow', units, flow).number,
      write(given(lines, flow)),
      write(ask(flow)),
      [
        ...(flow === lines.point?.flow ? ['operating point'] : []),
        ...[curveRemark(lines, flow)].filter((remark) => remark !== undefined),
      ].join('; '),
    ]),
  };
}
