// The states tried so far as rows of a table, in the reader's units and words.

import type { PlotTable } from '../../plot/plot-table.ts';
import type { Tried, TriedGate } from '../../state/trail.ts';
import { BALANCED } from '../../shop/difficulty-words.ts';
import { formatQuantity } from '../../units/format.ts';
import { unitLabel, type UnitSystem } from '../../units/quantity.ts';
import { gateWords } from '../gate/gate-words.ts';
import { verdictWord } from '../verdict/verdict-word.ts';

/**
 * Writes the table.
 *
 * @param trail - the states tried, the latest last
 * @param units - the units to write in
 * @returns the table, the latest state first
 */
export function triedRows(trail: readonly Tried[], units: UnitSystem): PlotTable {
  return {
    caption: 'Gates tried with the present ducts and collector, the latest first',
    columns: [
      { name: 'open' },
      { name: 'air flow', unit: unitLabel('flow', units) },
      { name: 'suction', unit: unitLabel('pressure', units) },
      { name: 'slowest speed', unit: unitLabel('velocity', units) },
      { name: 'in' },
      { name: 'verdict' },
    ],
    rows: trail
      .toReversed()
      .map(({ gates, flow, suction, slowest, verdict, outcome }) => [
        gates.map(gateText).join(', '),
        formatQuantity('flow', units, flow).number,
        formatQuantity('pressure', units, suction).number,
        formatQuantity('velocity', units, slowest.velocity).number,
        slowest.name,
        outcome === BALANCED ? verdictWord(verdict) : `${verdictWord(verdict)}; ${outcome}`,
      ]),
  };
}

function gateText({ name, travel }: TriedGate): string {
  return travel === 1 ? name : `${name} ${gateWords(travel)}`;
}
