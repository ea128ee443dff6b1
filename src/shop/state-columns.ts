// What a table says of a drop in one state of the gates, column by column: for the terminal and for the
// printed sheet alike.

import { formatQuantity } from '../units/format.ts';
import { type Quantity, type UnitSystem, unitLabel } from '../units/quantity.ts';
import { sectionLabelInside } from './section-label.ts';
import type { Shop } from './schema/shop-schema.ts';
import type { DropReport } from './state-report.ts';
import { verdictWords } from './verdict-words.ts';

/** What a cell is made from. */
export interface StateCellSource {
  readonly shop: Shop;
  readonly drop: DropReport;
  readonly system: UnitSystem;
}

/** A column of drops. */
export interface StateColumn {
  readonly heading: string;
  /** What its numbers are; left out where the cells are words. */
  readonly quantity?: Quantity;
  readonly cell: (source: StateCellSource) => string;
}

export const DROP_NAME: StateColumn = { heading: 'Drop', cell: ({ drop }) => drop.name };
export const FLOW = numbers('Flow', 'flow', ({ flow }) => flow);
export const NEED = numbers('Need', 'flow', ({ need }) => need);
export const SPEED = numbers('Speed', 'velocity', ({ velocity }) => velocity);
export const SLOWEST = numbers('Slowest', 'velocity', ({ slowest }) => slowest.velocity);
export const HOOD_SUCTION = numbers('Hood', 'pressure', (drop) => drop.hoodStaticPressure);

/** Where the air of the drop is slowest. */
export const SLOWEST_PLACE: StateColumn = {
  heading: 'Where that is',
  cell: ({ shop, drop }) => {
    const at = drop.slowest.section;
    if (shop.drops.find(({ id }) => id === drop.id)?.into === at) return 'its own pipe';
    return sectionLabelInside(shop.sections.find(({ id }) => id === at) ?? { id: at });
  },
};

export const GATE: StateColumn = {
  heading: 'Gate',
  quantity: 'fraction',
  cell: ({ drop }) => `${Math.round(100 * drop.travel)} %`,
};

export const VERDICT: StateColumn = {
  heading: 'Verdict',
  cell: ({ shop, drop, system }) => verdictWords(shop, drop, system),
};

/**
 * The unit that belongs in the heading of a column.
 *
 * @param column - the column
 * @param system - the units to show
 * @returns its label, empty for words and for cells that name their unit
 */
export function columnUnit({ quantity }: StateColumn, system: UnitSystem): string {
  return quantity === undefined || quantity === 'fraction' ? '' : unitLabel(quantity, system);
}

function numbers(
  heading: string,
  quantity: Quantity,
  amount: (drop: DropReport) => number | null,
): StateColumn {
  return {
    heading,
    quantity,
    cell: ({ drop, system }) => {
      const si = amount(drop);
      return si === null ? '–' : formatQuantity(quantity, system, si).number;
    },
  };
}
