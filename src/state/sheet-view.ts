// What the printed sheet of a shop says of its states: each drop alone and each saved set, worked out on
// a model of its own, so that the states on the page stay as they are.

import { travelsWhenOpen, usualStates } from '../shop/gate-state.ts';
import type { Shop } from '../shop/schema/shop-schema.ts';
import { sentence } from '../shop/sentence.ts';
import { modelOf } from '../shop/shop-model.ts';
import {
  columnUnit,
  DROP_NAME,
  FLOW,
  NEED,
  SLOWEST,
  SLOWEST_PLACE,
  SPEED,
  VERDICT,
} from '../shop/state-columns.ts';
import { type DropReport, type StateReport, stateReport } from '../shop/state-report.ts';
import type { UnitSystem } from '../units/quantity.ts';

/** A column of the sheet's tables. */
export interface SheetColumn {
  readonly name: string;
  /** Empty where the cells are words. */
  readonly unit: string;
  readonly side: 'start' | 'end';
}

/** A saved set with its drops. */
export interface SheetSet {
  readonly name: string;
  /** Cells of each open drop. */
  readonly rows: readonly (readonly string[])[];
  readonly sentence: string;
}

/** The states of a shop in tables. */
export interface SheetStates {
  readonly columns: readonly SheetColumn[];
  /** Cells of each drop, it alone being open. */
  readonly alone: readonly (readonly string[])[];
  readonly sets: readonly SheetSet[];
}

/** The states as one table: every row begins with its state. */
export interface StateTable {
  readonly columns: readonly { readonly name: string; readonly unit?: string }[];
  readonly rows: readonly (readonly string[])[];
}

const COLUMNS = [DROP_NAME, FLOW, NEED, SPEED, SLOWEST, SLOWEST_PLACE, VERDICT];

/**
 * The states that a shop is judged by.
 *
 * @param shop - a shop in order
 * @param system - the units to speak in
 * @returns the columns, and the cells of each drop alone and of each set
 */
export function sheetStates(shop: Shop, system: UnitSystem): SheetStates {
  const model = modelOf(shop);
  const cells = (drop: DropReport) => COLUMNS.map(({ cell }) => cell({ shop, drop, system }));
  const states = usualStates(shop).map((state) => ({
    ...state,
    report: stateReport(model, travelsWhenOpen(shop.drops, state.open)),
  }));
  return {
    columns: COLUMNS.map((column) => ({
      name: column.heading,
      unit: columnUnit(column, system),
      side: column.quantity === undefined ? 'start' : 'end',
    })),
    alone: states
      .filter(({ kind }) => kind === 'alone')
      .flatMap(({ open, report }) => rowsOf(report, open).map(cells)),
    sets: states
      .filter(({ kind }) => kind === 'gate set')
      .map(({ name, report }) => ({
        name,
        rows: rowsOf(report, report.open).map(cells),
        sentence: sentence(shop, report, system),
      })),
  };
}

/**
 * The states of a shop as one table, to be saved or copied.
 *
 * @param states - the states
 * @returns a row for each drop alone, then one for each drop of each set
 */
export function stateTable({ columns, alone, sets }: SheetStates): StateTable {
  return {
    columns: [
      { name: 'State' },
      ...columns.map(({ name, unit }) => (unit === '' ? { name } : { name, unit })),
    ],
    rows: [
      ...alone.map((cells) => ['alone', ...cells]),
      ...sets.flatMap(({ name, rows }) => rows.map((cells) => [name, ...cells])),
    ],
  };
}

function rowsOf({ drops }: StateReport, ids: readonly string[]): DropReport[] {
  return drops.filter(({ id }) => ids.includes(id));
}
