// The ways in which a pasted text may be cut into cells. A tab, a semicolon or an upright stroke leave
// no doubt; with commas and spaces there may be several ways, since both also stand within numbers.

/** Lines of cells, as written but for spaces at their ends. */
export interface Layout {
  readonly lines: readonly Line[];
}

/** One line: its cells, and the whole of it. */
export interface Line {
  readonly cells: readonly string[];
  readonly text: string;
}

/** Parts cells wherever it stands on most lines that hold numbers. */
const CLEAR_MARKS = ['\t', ';', '|'];
const THREE_DIGITS = /^\d{3}(?!\d)/;
const GROUP_BEGIN = /^[-+]?[1-9]\d{0,2}$/;
const WHOLE = /^[-+]?\d+$/;

/**
 * Cuts a text into cells.
 *
 * @param text - what was pasted
 * @returns the ways to cut it, the likeliest first; blank lines are left out
 */
export function cellLayouts(text: string): readonly Layout[] {
  const lines = text.split(/\r\n|[\r\n\v\f\u2028]/).filter((line) => line.trim() !== '');
  const numbered = lines.filter((line) => (line.match(/\d+/g) ?? []).length > 1);
  const clear = CLEAR_MARKS.find((mark) => {
    const marked = numbered.filter((line) => line.trim().includes(mark));
    return marked.length > 0 && 2 * marked.length > numbered.length;
  });
  if (clear !== undefined) return [layout(lines, (line) => markedCells(line, clear))];
  const commas = (line: string) => markedCells(line, ',');
  const spaces = (line: string) => line.trim().split(/[ \t]+/);
  return [
    layout(lines, (line) => line.trim().split(/, +/)),
    layout(lines, (line) => line.trim().split(/[ \t]{2,}/)),
    layout(lines, commas),
    layout(lines, (line) => joined(commas(line), ',', isDecimalPart, 'last')),
    layout(lines, (line) => joined(commas(line), ',', isGroup, 'first')),
    layout(lines, spaces),
    layout(lines, (line) => joined(spaces(line), ' ', isGroup, 'first')),
  ];
}

function layout(lines: readonly string[], cut: (line: string) => readonly string[]): Layout {
  return {
    lines: lines.map((line) => ({
      cells: cut(line).map((cell) => cell.trim()),
      text: line.trim(),
    })),
  };
}

/** Cells between marks; one in quotation marks may hold the mark itself. Outer strokes are a frame. */
function markedCells(line: string, mark: string): readonly string[] {
  const inner = mark === '|' ? line.trim().replace(/^\||\|$/g, '') : line;
  const cells: string[] = [];
  let rest = inner;
  for (;;) {
    const quoted = /^\s*"([^"]*)"\s*/.exec(rest);
    const after = quoted ? rest.slice(quoted[0].length) : '';
    if (quoted && (after === '' || after.startsWith(mark))) {
      cells.push(quoted[1] ?? '');
      if (after === '') return cells;
      rest = after.slice(mark.length);
      continue;
    }
    const end = rest.indexOf(mark);
    if (end < 0) return [...cells, rest];
    cells.push(rest.slice(0, end));
    rest = rest.slice(end + mark.length);
  }
}

/** Three or four cells that may be two numbers: neighbours that belong together are put together. */
function joined(
  cells: readonly string[],
  mark: string,
  belongs: (left: string, right: string) => boolean,
  which: 'first' | 'last',
): readonly string[] {
  const [a = '', b = '', c = '', d = ''] = cells;
  if (cells.length === 4 && belongs(a, b) && belongs(c, d)) return [a + mark + b, c + mark + d];
  if (cells.length !== 3) return cells;
  if (which === 'first' && belongs(a, b)) return [a + mark + b, c];
  if (belongs(b, c)) return [a, b + mark + c];
  return belongs(a, b) ? [a + mark + b, c] : cells;
}

function isGroup(left: string, right: string): boolean {
  return GROUP_BEGIN.test(left) && THREE_DIGITS.test(right);
}

function isDecimalPart(left: string, right: string): boolean {
  return WHOLE.test(left) && /^\d+(?:\s*\D*)$/.test(right);
}
