// The drawing of the run as a table: a row a duct, in the order of the document.

import type { PlotTable } from '../../plot/plot-table.ts';
import { RUN_STATE_WORDS } from '../../state/part-reading.ts';
import type { SectionView } from '../../state/run-view.ts';

/**
 * Writes the table.
 *
 * @param sections - the ducts as they fare now
 * @param speedUnit - what their speeds are written in
 * @returns a row for each
 */
export function runTable(sections: readonly SectionView[], speedUnit: string): PlotTable {
  return {
    caption: 'The ducts, and how they fare with the gates as they are',
    columns: [
      { name: 'duct' },
      { name: 'empties into' },
      { name: 'inside and length' },
      { name: 'speed', unit: speedUnit },
      { name: 'fares' },
    ],
    rows: sections.map(({ name, into, size, length, speed, state, drop }) => [
      drop === undefined ? name : `${name}, from ${drop.name}`,
      sections[into]?.name ?? 'the collector',
      `${size} × ${length}`,
      state === 'still' ? '–' : speed,
      RUN_STATE_WORDS[state],
    ]),
  };
}
