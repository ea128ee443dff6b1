// Reads curves from CSV as `curvesCsv` writes it, also after a spreadsheet has saved it with semicolons
// and decimal commas. Lines that follow one another with one name are one curve.

import type { Problem } from '../opening/problem.ts';
import { CURVE_FORMAT, CURVE_VERSION } from '../schema/curve-schema.ts';
import { CSV_COLUMNS, type CsvColumn } from './curves-csv.ts';

/** Raw documents with the place of each, and what is wrong with the file itself. */
export interface ReadCurves {
  readonly documents: readonly { readonly place: string; readonly document: unknown }[];
  readonly problems: readonly Problem[];
}

type Row = Readonly<Record<CsvColumn, string>>;

const NEEDED: readonly CsvColumn[] = ['name', 'flow [m³/s]', 'pressure [Pa]'];

/**
 * Reads CSV as raw curve documents; they are still to be opened.
 *
 * @param text - of the file
 * @returns the documents, or which column is missing
 */
export function readCurvesCsv(text: string): ReadCurves {
  const plain = text.replace(/^\ufeff/, '');
  const mark = (plain.split(/\r?\n/, 1)[0] ?? '').includes(';') ? ';' : ',';
  const [head = [], ...lines] = table(plain, mark);
  const missing = NEEDED.filter((column) => !head.includes(column));
  if (missing.length > 0) {
    const message = `lacks the column “${missing.join('”, “')}”; its columns must be ${CSV_COLUMNS.join(', ')}`;
    return { documents: [], problems: [{ place: 'line 1', message }] };
  }
  const rows = lines.map((cells) => rowOf(head, cells));
  const curves: { readonly line: number; readonly rows: Row[] }[] = [];
  rows.forEach((row, i) => {
    const last = curves.at(-1);
    if (last?.rows[0]?.name === row.name) last.rows.push(row);
    else curves.push({ line: i + 2, rows: [row] });
  });
  return {
    documents: curves.map((curve) => ({
      place: `line ${curve.line}`,
      document: documentOf(curve.rows),
    })),
    problems:
      curves.length > 0
        ? []
        : [{ place: 'line 2', message: 'is missing: the file holds no points' }],
  };
}

function documentOf(rows: readonly Row[]): unknown {
  const first = rows[0]!;
  const kind = first['pressures are'] || 'fan-static';
  return {
    format: CURVE_FORMAT,
    version: CURVE_VERSION,
    units: 'SI',
    name: first.name,
    ...(first.note === '' ? {} : { note: first.note }),
    ...(first.source === '' ? {} : { source: first.source }),
    basis: kind === 'tap' ? { kind, diameter: number(first['tap diameter [m]']) } : { kind },
    includes: { filter: isYes(first['with filter']), separator: isYes(first['with separator']) },
    density: first['air density [kg/m³]'] === '' ? 1.2 : number(first['air density [kg/m³]']),
    points: rows.map((row) => ({
      flow: number(row['flow [m³/s]']),
      pressure: number(row['pressure [Pa]']),
      ...(isYes(row['set aside']) ? { aside: true } : {}),
    })),
  };
}

/** A number, or the text as it stands, which the schema then refuses by name. */
function number(text: string): number | string {
  const value = Number(text.trim().replace(',', '.'));
  return text.trim() === '' || Number.isNaN(value) ? text : value;
}

function isYes(text: string): boolean {
  return /^(?:yes|true|1)$/i.test(text.trim());
}

function rowOf(head: readonly string[], cells: readonly string[]): Row {
  const at = (column: CsvColumn) =>
    (cells[head.indexOf(column)] ?? '').replace(/^'(?=[=+\-@\t\r'])/, '');
  return Object.fromEntries(CSV_COLUMNS.map((column) => [column, at(column)])) as Row;
}

/** Lines of cells; a cell in quotation marks may hold the mark, line ends and doubled quotation marks. */
function table(text: string, mark: string): string[][] {
  const lines: string[][] = [[]];
  const cell = new RegExp(`(?:"((?:[^"]|"")*)"|([^"${mark}\\r\\n]*))(${mark}|\\r?\\n|$)`, 'gy');
  for (let match = cell.exec(text); match; match = cell.exec(text)) {
    const [, inQuotes, bare = '', end] = match;
    lines.at(-1)!.push((inQuotes?.replaceAll('""', '"') ?? bare).trim());
    if (end === '') break;
    if (end !== mark) lines.push([]);
  }
  return lines.filter((cells) => cells.some((each) => each !== ''));
}
