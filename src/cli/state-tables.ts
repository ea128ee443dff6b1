// The numbers of balanced states in tables.

import type { Shop } from '../shop/schema/shop-schema.ts';
import type { DropReport, StateReport } from '../shop/state-report.ts';
import { verdictWords } from '../shop/verdict-words.ts';
import { formatQuantity } from '../units/format.ts';
import { type Quantity, type UnitSystem, unitLabel } from '../units/quantity.ts';
import { type Column, textTable } from './text-table.ts';

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
  const columns = [...dropColumns(system), ...collectorColumns(system), VERDICT];
  const rows = reports.flatMap((report, i) => {
    const drop = report.drops[i];
    if (drop === undefined) return [];
    const verdict = verdictWords(shop, drop, system);
    return [[...dropCells(drop, system), ...collectorCells(report, system), verdict]];
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
  const columns = [...dropColumns(system), GATE, VERDICT];
  const rows = report.drops.map((drop) => [
    ...dropCells(drop, system),
    `${Math.round(100 * drop.travel)} %`,
    verdictWords(shop, drop, system),
  ]);
  const point = report.operatingPoint;
  if (point === null) return textTable(columns, rows);
  const flow = formatQuantity('flow', system, point.flow).text;
  const suction = formatQuantity('pressure', system, point.suction).text;
  return [...textTable(columns, rows), `At the collector: ${flow} against ${suction} of suction.`];
}

const VERDICT: Column = { heading: 'Verdict', side: 'left' };
const GATE: Column = { heading: 'Gate', side: 'right' };

function dropColumns(system: UnitSystem): Column[] {
  return [
    { heading: 'Drop', side: 'left' },
    withUnit('Flow', 'flow', system),
    withUnit('Need', 'flow', system),
    withUnit('Speed', 'velocity', system),
    withUnit('Slowest', 'velocity', system),
    withUnit('Hood', 'pressure', system),
  ];
}

function dropCells(drop: DropReport, system: UnitSystem): string[] {
  return [
    drop.name,
    number('flow', system, drop.flow),
    drop.need === null ? '–' : number('flow', system, drop.need),
    number('velocity', system, drop.velocity),
    number('velocity', system, drop.slowest.velocity),
    number('pressure', system, drop.hoodStaticPressure),
  ];
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
