// The numbers of balanced states in tables.

import type { Shop } from '../shop/schema/shop-schema.ts';
import {
  columnUnit,
  DROP_NAME,
  FLOW,
  GATE,
  HOOD_SUCTION,
  NEED,
  SLOWEST,
  SPEED,
  type StateColumn,
  VERDICT,
} from '../shop/state-columns.ts';
import type { StateReport } from '../shop/state-report.ts';
import { formatQuantity } from '../units/format.ts';
import { type Quantity, type UnitSystem, unitLabel } from '../units/quantity.ts';
import { type Column, textTable } from './text-table.ts';

const OF_DROP = [DROP_NAME, FLOW, NEED, SPEED, SLOWEST, HOOD_SUCTION];

/**
 * Each drop alone: one row a drop, with what the collector does then.
 *
 * @param shop - the shop
 * @param reports - states in which one drop was asked for, in the order of the drops
 * @param system - the units to show
 * @returns lines
 */
export function aloneTable(
  shop: Shop,
  reports: readonly StateReport[],
  system: UnitSystem,
): string[] {
  const ofDrop = OF_DROP.map((column) => headed(column, system));
  const columns = [...ofDrop, ...collectorColumns(system), headed(VERDICT, system)];
  const rows = reports.flatMap((report, i) => {
    const drop = report.drops[i];
    if (drop === undefined) return [];
    const source = { shop, drop, system };
    const cells = OF_DROP.map(({ cell }) => cell(source));
    return [[...cells, ...collectorCells(report, system), VERDICT.cell(source)]];
  });
  return textTable(columns, rows);
}

/**
 * One state: a row for each drop, and the collector below.
 *
 * @param shop - the shop
 * @param report - the state
 * @param system - the units to show
 * @returns lines
 */
export function stateTable(shop: Shop, report: StateReport, system: UnitSystem): string[] {
  const shown = [...OF_DROP, GATE, VERDICT];
  const columns = shown.map((column) => headed(column, system));
  const rows = report.drops.map((drop) => shown.map(({ cell }) => cell({ shop, drop, system })));
  const point = report.operatingPoint;
  if (point === null) return textTable(columns, rows);
  const flow = formatQuantity('flow', system, point.flow).text;
  const suction = formatQuantity('pressure', system, point.suction).text;
  return [...textTable(columns, rows), `At the collector: ${flow} against ${suction} of suction.`];
}

function headed(column: StateColumn, system: UnitSystem): Column {
  const unit = columnUnit(column, system);
  const heading = unit === '' ? column.heading : `${column.heading}, ${unit}`;
  return { heading, side: column.quantity === undefined ? 'left' : 'right' };
}

function collectorColumns(system: UnitSystem): Column[] {
  return [withUnit('Collector', 'flow', system), withUnit('Suction', 'pressure', system)];
}

function collectorCells({ operatingPoint }: StateReport, system: UnitSystem): string[] {
  if (operatingPoint === null) return ['–', '–'];
  const { flow, suction } = operatingPoint;
  return [number('flow', system, flow), number('pressure', system, suction)];
}

function withUnit(heading: string, quantity: Quantity, system: UnitSystem): Column {
  return { heading: `${heading}, ${unitLabel(quantity, system)}`, side: 'right' };
}

function number(quantity: Quantity, system: UnitSystem, si: number): string {
  return formatQuantity(quantity, system, si).number;
}
