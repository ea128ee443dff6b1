// A pasted text as a table, cut in one way and read with one decimal mark: its columns, what is known
// of each, and the lines that hold no points.

import { tidyText } from '../../units/tidy-text.ts';
import type { Layout, Line } from './cell-layouts.ts';
import { type ColumnHint, columnHint, lineHints } from './column-hint.ts';
import { type DecimalMark, type WrittenAmount, writtenAmount } from './written-amount.ts';

/** One column of numbers. */
export interface PastedColumn {
  /** Its heading; empty where it has none. */
  readonly heading: string;
  readonly hint: ColumnHint;
  /** One for each line of points; undefined where the cell holds no number. */
  readonly amounts: readonly (WrittenAmount | undefined)[];
}

/** A table of numbers. */
export interface PastedTable {
  readonly mark: DecimalMark;
  /** Columns that hold numbers, from the left. */
  readonly columns: readonly PastedColumn[];
  /** Lines of points, as they were written. */
  readonly lines: readonly string[];
  /** Lines below the first points that hold none. */
  readonly passedOver: readonly string[];
}

interface TidyLine {
  readonly cells: readonly string[];
  readonly text: string;
}

const NOTHING_KNOWN: ColumnHint = { holds: undefined, unit: undefined };

/**
 * Reads a layout as a table.
 *
 * @param layout - lines cut into cells
 * @param mark - what parts decimals off
 * @returns the table; undefined where no two lines, or no two columns, hold numbers
 */
export function pastedTable(layout: Layout, mark: DecimalMark): PastedTable | undefined {
  const lines = upright(layout.lines.map(tidyLine), mark);
  const isPoints = lines.map(({ cells }) => numbersIn(cells, mark) >= 2);
  const first = isPoints.indexOf(true);
  const points = lines.filter((_, i) => isPoints[i]);
  if (points.length < 2) return undefined;
  const heads = lines.slice(0, first);
  const width = Math.max(...points.map(({ cells }) => cells.length));
  const columns = Array.from({ length: width }, (_, at): PastedColumn => {
    const heading = heads
      .filter(({ cells }) => cells.length === width)
      .map(({ cells }) => cells[at] ?? '')
      .filter((cell) => cell !== '');
    const amounts = points.map(({ cells }) => writtenAmount(cells[at] ?? '', mark));
    return { heading: heading.join(' '), hint: hintOf(heading), amounts };
  }).filter(
    ({ amounts }) => 2 * amounts.filter((each) => each !== undefined).length > amounts.length,
  );
  if (columns.length < 2) return undefined;
  const passed = lines.filter((_, i) => i > first && !isPoints[i]);
  return {
    mark,
    columns: hintedByLines(columns, heads),
    lines: points.map(({ text }) => text),
    passedOver: passed.map(({ text }) => text),
  };
}

function tidyLine({ cells, text }: Line): TidyLine {
  const tidy = cells.map(tidyText);
  const last = tidy.findLastIndex((cell) => cell !== '');
  return { cells: tidy.slice(0, last + 1), text: tidyText(text) };
}

function numbersIn(cells: readonly string[], mark: DecimalMark): number {
  return cells.filter((cell) => writtenAmount(cell, mark) !== undefined).length;
}

/** A unit may stand under the name, in a row of its own. */
function hintOf(headings: readonly string[]): ColumnHint {
  const hints = [headings.join(' '), ...headings].map(columnHint);
  return hints.find(({ unit }) => unit) ?? hints.find(({ holds }) => holds) ?? NOTHING_KNOWN;
}

/** Where no heading stands over a column, a line above the table may say what the two hold. */
function hintedByLines(
  columns: readonly PastedColumn[],
  heads: readonly TidyLine[],
): readonly PastedColumn[] {
  if (columns.length !== 2 || columns.some(({ hint }) => hint.unit)) return columns;
  const said = heads.map(({ text }) => lineHints(text)).findLast((hints) => hints.length === 2);
  if (!said) return columns;
  const isKnown = columns.every(({ hint }) => hint.holds);
  return columns.map((column, at) => {
    const hint = isKnown ? said.find(({ holds }) => holds === column.hint.holds) : said[at];
    return hint ? { ...column, hint } : column;
  });
}

/** A table may lie on its side: each line then begins with its heading. */
function upright(lines: readonly TidyLine[], mark: DecimalMark): readonly TidyLine[] {
  const lying = lines.filter(
    ({ cells }) =>
      cells.length > 3 &&
      writtenAmount(cells[0] ?? '', mark) === undefined &&
      columnHint(cells[0] ?? '').holds !== undefined &&
      numbersIn(cells, mark) >= cells.length - 1,
  );
  const width = lying[0]?.cells.length ?? 0;
  const isLying = lying.length >= 2 && lying.every(({ cells }) => cells.length === width);
  if (!isLying) return lines;
  return Array.from({ length: width }, (_, at) => {
    const cells = lying.map((line) => line.cells[at] ?? '');
    return { cells, text: cells.join('  ') };
  });
}
