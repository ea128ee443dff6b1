// A table of figures as text for other programs: comma-separated values for a spreadsheet, or lines
// with tabs for a mail.
//
// 1. RFC 4180, Common Format and MIME Type for Comma-Separated Values (CSV) Files.

import type { PlotTable, TableColumn } from './plot-table.ts';

/** Without it some spreadsheets take the text for one of an older encoding. */
const BYTE_ORDER_MARK = '\uFEFF';
const LINE_END = '\r\n';
/** What people read between thousands: a comma, or in metric a narrow space. */
const THOUSANDS = /[,\u202f]/g;
const FIGURE = /^[-−]?\d{1,3}(?:[,\u202f]\d{3})*(?:\.\d+)?$|^[-−]?\d+(?:\.\d+)?$/;
/** What a spreadsheet might run instead of showing it. */
const FORMULA = /^[=+\-@\t\r]/;

/**
 * The table as comma-separated values: numbers bare, words never taken for a formula.
 *
 * @param table - the figures
 * @returns the text of the file
 */
export function csvText({ columns, rows }: PlotTable): string {
  const head = columns.map((column) => csvCell(headOf(column), undefined));
  const body = rows.map((row) => row.map((cell, i) => csvCell(cell, columns[i]?.unit)));
  return BYTE_ORDER_MARK + [head, ...body].map((cells) => cells.join(',') + LINE_END).join('');
}

/**
 * The table as lines of text, a tab between cells.
 *
 * @param table - the figures
 * @returns the text, the caption first
 */
export function plainText({ caption, columns, rows }: PlotTable): string {
  const lines = [columns.map(headOf), ...rows].map((cells) => cells.map(oneLine).join('\t'));
  return `${[caption, ...lines].join('\n')}\n`;
}

function headOf({ name, unit }: TableColumn): string {
  return unit === undefined ? name : `${name} [${unit}]`;
}

function csvCell(cell: string, unit: string | undefined): string {
  const text = oneLine(cell);
  if (unit !== undefined && FIGURE.test(text)) {
    return text.replaceAll(THOUSANDS, '').replace('−', '-');
  }
  const harmless = FORMULA.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

function oneLine(text: string): string {
  return text.replaceAll(/[\t\r\n]+/g, ' ');
}
