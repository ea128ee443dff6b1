// A table of answers as plain figures, to be saved or copied.

import type { PlotTable } from '../../plot/plot-table.ts';
import {
  type AnswerColumn,
  type AnswerRow,
  cellText,
  type FootRow,
} from '../../state/decisions/answer-rows.ts';

/** What a table of answers holds. */
export interface AnswerContents {
  readonly caption: string;
  readonly columns: readonly AnswerColumn[];
  readonly rows: readonly AnswerRow[];
  readonly foot: readonly FootRow[];
}

/**
 * Writes a table of answers as figures: columns bear the name of their group, a row's mark stands behind
 * its name, and what stands below several columns goes under the first of them.
 *
 * @param contents - the table of answers
 * @returns the same as plain text
 */
export function plainTable({ caption, columns, rows, foot }: AnswerContents): PlotTable {
  const named = columns.map(({ name, unit, group }) => ({
    name: group === undefined ? name : `${group}, ${name}`,
    unit: unit === '' ? undefined : unit,
  }));
  return {
    caption,
    columns: named,
    rows: [
      ...rows.map(({ cells, mark }) => {
        const [name = '', ...rest] = columns.map((_, i) => cellText(cells[i]));
        return [mark === undefined ? name : `${name} (${mark})`, ...rest];
      }),
      ...foot.map(({ name, cells }) => [
        name,
        ...cells.flatMap(({ text, span }) => [text, ...Array.from({ length: span - 1 }, () => '')]),
      ]),
    ],
  };
}
