// Curves as CSV for a spreadsheet: a line for each point, with what the point's curve is before it. The
// numbers are SI. Power points, price and a test of one's own go only into JSON.

import { freshId } from '../edits/fresh-id.ts';
import type { Curve } from '../schema/curve-schema.ts';
import type { TextFile } from '../shop-file.ts';

/** Headings, in the order of the columns. */
export const CSV_COLUMNS = [
  'name',
  'pressures are',
  'tap diameter [m]',
  'with filter',
  'with separator',
  'air density [kg/m³]',
  'flow [m³/s]',
  'pressure [Pa]',
  'set aside',
  'note',
  'source',
] as const;

/** A column of the file. */
export type CsvColumn = (typeof CSV_COLUMNS)[number];

/**
 * The CSV file of curves.
 *
 * @param curves - one or more
 * @returns name and text of the file, with a byte order mark, so that spreadsheets read it as UTF-8
 */
export function curvesCsv(curves: readonly Curve[]): TextFile {
  const rows = curves.flatMap((curve) => curve.points.map((point) => cells(curve, point)));
  const lines = [CSV_COLUMNS, ...rows].map((row) => row.map(quoted).join(','));
  const [only] = curves;
  return {
    name: `${only && curves.length === 1 ? freshId(only.name, []) : 'curves'}.csv`,
    text: `\ufeff${lines.join('\r\n')}\r\n`,
  };
}

function cells(
  curve: Curve,
  { flow, pressure, aside }: Curve['points'][number],
): readonly string[] {
  const { basis, includes } = curve;
  return [
    curve.name,
    basis.kind,
    basis.kind === 'tap' ? String(basis.diameter) : '',
    yesNo(includes.filter),
    yesNo(includes.separator),
    String(curve.density),
    String(flow),
    String(pressure),
    aside ? 'yes' : '',
    curve.note ?? '',
    curve.source ?? '',
  ];
}

function yesNo(is: boolean): string {
  return is ? 'yes' : 'no';
}

/** What a spreadsheet would take for a formula is led by an apostrophe; a negative number is none. */
function quoted(cell: string): string {
  const isFormula = /^[=+\-@\t\r']/.test(cell) && !/^-?\d/.test(cell);
  const safe = isFormula ? `'${cell}` : cell;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
