// A doubt as it is told to the page: without every single case, which would be much to send.

import type { CollectorDoubt } from '../../shop/decisions/collector-doubt.ts';
import type { DropDoubt, StateDoubt } from '../../shop/decisions/doubt.ts';
import type { MainDoubts } from '../../shop/decisions/main-doubt.ts';

/** A drop in one state, doubted, in sum. */
export type ToldDrop = Omit<DropDoubt, 'cases'>;

/** A state, doubted, in sum. */
export interface ToldState extends Omit<StateDoubt, 'drops'> {
  readonly drops: readonly ToldDrop[];
}

/** One size of the main, doubted, in sum. */
export type ToldMain = Omit<MainDoubts['rows'][number], 'states'> & {
  readonly states: readonly ToldState[];
};

/** The main in every size, doubted, in sum. */
export interface ToldMains {
  /** In the order of the sizes. */
  readonly rows: readonly ToldMain[];
}

/** One collector, doubted, in sum. */
export type ToldCollector = Omit<CollectorDoubt, 'states'> & {
  readonly states: readonly ToldState[];
};

/**
 * The mains in sum.
 *
 * @param doubts - what came of all cases
 * @returns the same without the cases
 */
export function toldMains({ rows }: MainDoubts): ToldMains {
  return { rows: rows.map((row) => ({ ...row, states: row.states.map(toldState) })) };
}

/**
 * The collectors in sum.
 *
 * @param doubts - what came of all cases
 * @returns the same without the cases
 */
export function toldCollectors(doubts: readonly CollectorDoubt[]): readonly ToldCollector[] {
  return doubts.map((doubt) => ({ ...doubt, states: doubt.states.map(toldState) }));
}

function toldState({ state, drops }: StateDoubt): ToldState {
  return { state, drops: drops.map(({ cases: _cases, ...drop }) => drop) };
}
