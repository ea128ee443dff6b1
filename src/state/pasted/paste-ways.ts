// Every way in which a pasted text makes sense as a table, but for those that another way beats: fewer
// lines understood, headings that don't fit, numbers that no collector has.

import type { UnitSystem } from '../../units/quantity.ts';
import { toSi, UNITS } from '../../units/unit.ts';
import { cellLayouts } from './cell-layouts.ts';
import { type ChosenColumns, chooseColumns } from './choose-columns.ts';
import { columnUnits, isLikely, likelyUnits } from './column-units.ts';
import { type PastedColumn, type PastedTable, pastedTable } from './pasted-table.ts';

/** One way to read the text. */
export interface PasteWay {
  readonly id: string;
  readonly table: PastedTable;
  readonly chosen: Exclude<ChosenColumns, { kind: 'none' }>;
  /** Whether the cells stand so far apart, or so marked, that the cut is beyond doubt. */
  readonly isSure: boolean;
}

/** Of several layouts the first two part cells by a comma with a space, or by several spaces. */
const SURE = 2;
const MARKS = ['point', 'comma'] as const;

/**
 * The ways to read a text as a table of points.
 *
 * @param text - what was pasted
 * @param system - the page's units
 * @returns ways that differ in what they read, the likeliest first
 */
export function pasteWays(text: string, system: UnitSystem): readonly PasteWay[] {
  const layouts = cellLayouts(text);
  const all = layouts.flatMap((layout, i) =>
    MARKS.flatMap((mark): PasteWay[] => {
      const table = pastedTable(layout, mark);
      const chosen = table && chooseColumns(table);
      if (!table || !chosen || chosen.kind === 'none') return [];
      return [{ id: `${i} ${mark}`, table, chosen, isSure: layouts.length === 1 || i < SURE }];
    }),
  );
  const most = Math.max(...all.map(({ table }) => table.lines.length));
  const whole = all.filter(({ table }) => table.lines.length === most);
  const headed = preferred(whole, ({ chosen }) => chosen.kind === 'chosen');
  const sure = preferred(headed, ({ isSure, chosen }) => isSure && chosen.kind !== 'open');
  const likely = preferred(sure, (way) => isWithinReason(way, system));
  const rising = preferred(likely, hasOrder);
  return rising.filter((way, i) => !rising.slice(0, i).some((former) => isSame(former, way)));
}

/** Those that fulfil a condition, or all where none does. */
function preferred<T>(all: readonly T[], fulfils: (each: T) => boolean): readonly T[] {
  const some = all.filter(fulfils);
  return some.length > 0 ? some : all;
}

/** In its units, or in any that may be asked for, the greatest flow and pressure are a collector's. */
function isWithinReason({ table, chosen }: PasteWay, system: UnitSystem): boolean {
  const pairs = chosen.kind === 'open' ? chosen.pairs : [chosen.pair];
  const fits = (column: PastedColumn, holds: 'flow' | 'pressure') => {
    const units = columnUnits(column, holds, undefined);
    if (units.kind !== 'said') return likelyUnits(column, holds, system).length > 0;
    const values = column.amounts.map((each, i) =>
      toSi(units.units[i] ?? UNITS.plain, each?.value ?? 0),
    );
    return isLikely(holds, values);
  };
  return pairs.some(
    ({ flow, pressure }) =>
      fits(table.columns[flow]!, 'flow') && fits(table.columns[pressure]!, 'pressure'),
  );
}

/** Tables of a curve are written by rising or falling flow; of an open choice it can't be said. */
function hasOrder({ table, chosen }: PasteWay): boolean {
  if (chosen.kind === 'open') return true;
  const flows = table.columns[chosen.pair.flow]!.amounts.map((amount) => amount?.value ?? 0);
  const steps = flows.slice(1).map((flow, i) => Math.sign(flow - flows[i]!));
  return steps.every((step) => step === 1) || steps.every((step) => step === -1);
}

function isSame(a: PasteWay, b: PasteWay): boolean {
  return JSON.stringify(valuesOf(a)) === JSON.stringify(valuesOf(b));
}

/** Of both columns where they are chosen; of all where there is a choice. */
function valuesOf({ table, chosen }: PasteWay): unknown {
  const values = ({ amounts }: PastedColumn) => amounts.map((amount) => amount?.value);
  if (chosen.kind === 'open') return [chosen.pairs, table.columns.map(values)];
  const { flow, pressure } = chosen.pair;
  return [values(table.columns[flow]!), values(table.columns[pressure]!)];
}
