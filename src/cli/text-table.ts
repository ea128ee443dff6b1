// Columns of text that line up on a terminal.

/** A column: its heading, and on which side its cells line up. */
export interface Column {
  readonly heading: string;
  readonly side: 'left' | 'right';
}

/**
 * Headings and rows as lines. Counts a character as one place wide.
 *
 * @param columns - headings and sides
 * @param rows - cells of each row, as many as there are columns
 * @returns lines without trailing spaces
 */
export function textTable(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
): string[] {
  const all = [columns.map(({ heading }) => heading), ...rows];
  const widths = columns.map((_, c) => Math.max(...all.map((row) => places(row[c] ?? ''))));
  return all.map((row) =>
    columns
      .map(({ side }, c) => {
        const cell = row[c] ?? '';
        const gap = ' '.repeat((widths[c] ?? 0) - places(cell));
        return side === 'left' ? cell + gap : gap + cell;
      })
      .join('  ')
      .trimEnd(),
  );
}

function places(text: string): number {
  return [...new Intl.Segmenter().segment(text)].length;
}
