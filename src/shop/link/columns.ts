// A list of objects as columns of text: what is alike stands side by side, which packs far better than
// JSON. One line names the columns; a line of cells follows for each. A cell of a list holds how many
// items it has, and the items of all rows follow as a table of their own.

import { type Cell, cellText, cellValue } from './cells.ts';
import { LinkFault } from './fault.ts';
import { KEY_SIGNS, KEYS } from './words.ts';

export type Row = Readonly<Record<string, unknown>>;

/** Rows in one table; far more than a shop has. */
const MOST_ROWS = 50_000;
/** Objects inside one another, and lists inside lists. */
const DEEPEST = 12;
/** After the path of a column: it holds lists of objects, or lists of plain values. */
const [OBJECTS, VALUES] = ['*', '#'];
/** Before a key without a sign, up to the next sign of its end. */
const SPELLED = '~';
/** Before the one cell of a column whose cells are all alike. */
const ALIKE = '=';

interface Column {
  readonly path: readonly string[];
  readonly cells: unknown[];
}

/**
 * Writes a table.
 *
 * @param rows - plain JSON objects
 * @returns its lines
 */
export function writeTable(rows: readonly Row[]): string[] {
  const columns = new Map<string, Column>();
  rows.forEach((row, at) => flatten(row, [], at, columns));
  const all = [...columns.values()];
  const head = all.map(({ path, cells }) => pathText(path) + kindOf(cells)).join('\t');
  return [head, ...all.flatMap(({ cells }) => writeColumn(cells, rows.length))];
}

function flatten(row: Row, path: readonly string[], at: number, columns: Map<string, Column>) {
  for (const [key, value] of Object.entries(row)) {
    if (value === undefined) continue;
    const way = [...path, key];
    if (typeof value === 'object' && value !== null && !Array.isArray(value)) {
      flatten(value as Row, way, at, columns);
      continue;
    }
    const name = JSON.stringify(way);
    const column = columns.get(name) ?? { path: way, cells: [] };
    columns.set(name, column);
    column.cells[at] = value;
  }
}

function kindOf(cells: readonly unknown[]): string {
  const lists = cells.filter((cell) => Array.isArray(cell));
  if (lists.length === 0) return '';
  return lists.some((list) => list.some((item) => typeof item === 'object')) ? OBJECTS : VALUES;
}

function writeColumn(cells: readonly unknown[], length: number): string[] {
  const kind = kindOf(cells);
  const all = Array.from({ length }, (_, at) => cells[at]);
  if (kind === '') return [line(all as Cell[])];
  const counts = all.map((cell) => (Array.isArray(cell) ? cell.length : undefined));
  const items = all.flatMap((cell) => (Array.isArray(cell) ? cell : []));
  const table = kind === OBJECTS ? writeTable(items as Row[]) : [line(items as Cell[])];
  return [line(counts), ...table];
}

function line(cells: readonly (Cell | undefined)[]): string {
  const texts = cells.map(cellText);
  const [first = ''] = texts;
  return texts.length > 1 && texts.every((text) => text === first)
    ? ALIKE + first
    : texts.join('\t');
}

function pathText(path: readonly string[]): string {
  return path
    .map((key) => {
      const place = KEYS.indexOf(key);
      return place >= 0 ? KEY_SIGNS.charAt(place) : `${SPELLED}${key}${SPELLED}`;
    })
    .join('');
}

/** Reads lines one after another. */
export class LineReader {
  readonly #lines: readonly string[];
  #at = 0;

  /** @param text - lines with newlines between them */
  constructor(text: string) {
    this.#lines = text.split('\n');
  }

  next(): string {
    const next = this.#lines[this.#at++];
    if (next === undefined) throw new LinkFault('it ends too early');
    return next;
  }
}

/**
 * Reads a table.
 *
 * @param lines - by `writeTable`
 * @param length - how many rows it has [-]
 * @param depth - of tables around it [-]
 * @returns the rows
 * @throws LinkFault if the lines are none of a table
 */
export function readTable(lines: LineReader, length: number, depth = 0): Row[] {
  if (depth > DEEPEST) throw new LinkFault('lists lie too deep inside one another');
  const rows: Record<string, unknown>[] = Array.from({ length }, () => ({}));
  const head = lines.next();
  for (const spec of head === '' ? [] : head.split('\t')) {
    const [, signs = '', kind = ''] = /^(.*?)([*#]?)$/.exec(spec) ?? [];
    const path = readPath(signs);
    const values = readColumn(lines, kind, length, depth);
    values.forEach((value, at) => {
      if (value !== undefined) put(rows[at]!, path, value);
    });
  }
  return rows;
}

function readColumn(lines: LineReader, kind: string, length: number, depth: number): unknown[] {
  const cells = readLine(lines, length);
  if (kind === '') return cells;
  const counts = cells.map((cell) => (cell === undefined ? undefined : countOf(cell)));
  const total = counts.reduce<number>((sum, count) => sum + (count ?? 0), 0);
  if (total > MOST_ROWS) throw new LinkFault('it holds too many parts');
  const items = kind === OBJECTS ? readTable(lines, total, depth + 1) : readLine(lines, total);
  let at = 0;
  return counts.map((count) => {
    if (count === undefined) return undefined;
    at += count;
    return items.slice(at - count, at);
  });
}

function countOf(cell: Cell): number {
  if (typeof cell === 'number' && Number.isInteger(cell) && cell >= 0) return cell;
  throw new LinkFault('a number of parts is none');
}

function readLine(lines: LineReader, length: number): (Cell | undefined)[] {
  const text = lines.next();
  if (length === 0) return [];
  if (text.startsWith(ALIKE)) {
    const value = cellValue(text.slice(ALIKE.length));
    return Array.from({ length }, () => value);
  }
  const texts = text.split('\t');
  if (texts.length !== length) throw new LinkFault('a column is too short or too long');
  return texts.map(cellValue);
}

function readPath(signs: string): string[] {
  const keys = signs.match(/~[^~]*~|[^~]/g) ?? [];
  if (keys.length === 0 || keys.length > DEEPEST) throw new LinkFault('a column has no name');
  return keys.map((key) => {
    if (key.startsWith(SPELLED)) return key.slice(1, -1);
    const known = KEYS[KEY_SIGNS.indexOf(key)];
    if (known === undefined) throw new LinkFault('a column has an unknown name');
    return known;
  });
}

/** Own keys only: nothing reaches what objects have in common. */
function put(row: Record<string, unknown>, path: readonly string[], value: unknown): void {
  const [key = '', ...rest] = path;
  if (rest.length === 0) {
    Object.defineProperty(row, key, {
      value,
      enumerable: true,
      writable: true,
      configurable: true,
    });
    return;
  }
  if (!Object.hasOwn(row, key)) put(row, [key], {});
  const inner = row[key];
  if (typeof inner !== 'object' || inner === null || Array.isArray(inner)) {
    throw new LinkFault('a part lies inside a plain value');
  }
  put(inner as Record<string, unknown>, rest, value);
}
