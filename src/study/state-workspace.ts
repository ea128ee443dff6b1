// What the states of a study are solved with, round after round: the plan, workspaces, tables of the
// branches that are tabulated, and the solutions that forecasts are made from.

import { createWorkspace, type Workspace } from '../solve/workspace.ts';
import type { Characteristic } from './characteristic.ts';
import {
  CUBIC_LENGTH,
  GRID_POINTS,
  type GridReading,
  gridReading,
  type HeadGrid,
  headGridUpTo,
} from './head-grid.ts';
import type { SharedSweep } from './shared-sweep.ts';
import { planStates, type StatePlan, type StatesQuestion } from './state-plan.ts';

/** Room above the strongest suction, for curves that are drawn higher in a later round [-]. */
const ROOM = 1.3;
const NO_TABLE = new Float64Array(0);

/** A study's states, ready to be solved round after round. */
export interface StateSolver {
  readonly plan: StatePlan;
  /** Flows of the state solved last are in it; of tabulated sections only those that are followed. */
  readonly work: Workspace;
  /** The numbers of this round. */
  question: StatesQuestion;
  readonly sweep: SharedSweep;
  /** Characteristics of tabulated sections by setting, in this round. */
  readonly tables: Characteristic[][];
  /** Flows of the tabulated sections as cubics, by section and setting. */
  readonly cubics: readonly Float64Array[][];
  /** The same by state, then by section. */
  readonly flows: readonly Float64Array[][];
  /** Another one, in which whole networks are solved. */
  readonly wholeWork: Workspace;
  /** What is forecast: heads where tables are read, and flows at open ends; places of sections. */
  readonly headsAt: Int32Array;
  readonly flowsAt: Int32Array;
  /** Solutions of the first round by layout, state and curve; empty where there was none. */
  readonly first: (Float64Array | undefined)[];
  /** The last solution of each state in this round, and which it was. */
  readonly latest: { values: Float64Array; index: number }[];
  /** Tabulated sections of each state whose flows are followed, downstream ones first. */
  readonly followed: readonly Int32Array[];
  /** Head of the inlets of a tabulated section, over the grid's step [-], shape (sections). */
  readonly inside: Float64Array;
  readonly reading: GridReading;
  /** States solved by shared sweeps and in full, so far [-]. */
  readonly count: { shared: number; full: number };
}

/**
 * Prepares a study's states.
 * @param question - layouts, gates and collectors of the first round
 * @param ends - of each state, the open ends whose air is followed, as places in the network's order
 *   [-]; flows of tabulated sections are only found on their ways
 * @returns a solver that has solved nothing yet
 */
export function stateSolver(
  question: StatesQuestion,
  ends: readonly (readonly number[])[],
): StateSolver {
  const plan = planStates(question);
  const { layouts, gates, curves } = question;
  const network = layouts[0]!;
  const { count, firstInlet, endInlet, parent } = network;
  const { isTabulated, solved } = plan;
  const isEnd = (i: number) => firstInlet[i] === endInlet[i];
  const reads = (i: number) => isTabulated.subarray(firstInlet[i], endInlet[i]).includes(1);
  const headsAt = solved.filter(reads);
  const flowsAt = solved.filter(isEnd);
  const followed = gates.map((_, state) => {
    const on = new Set<number>();
    for (const end of ends[state] ?? []) {
      for (let i = end; i >= 0 && isTabulated[i] === 1; i = parent[i]!) on.add(i);
    }
    return Int32Array.from(on).toSorted();
  });
  const cubics = plan.examples.map((examples, i) =>
    Array.from(isTabulated[i] === 1 ? examples : [], () => {
      return new Float64Array(GRID_POINTS * CUBIC_LENGTH);
    }),
  );
  return {
    plan,
    work: createWorkspace(network),
    wholeWork: createWorkspace(network),
    question,
    sweep: {
      solved,
      isTabulated,
      tables: [],
      gate: gates[0] ?? new Float64Array(count),
      grid: gridFor(question),
      heads: new Float64Array(count),
    },
    tables: Array.from({ length: count }, () => []),
    cubics,
    flows: gates.map((_, state) =>
      Array.from({ length: count }, (__, i) => cubics[i]![plan.settings[i]![state]!] ?? NO_TABLE),
    ),
    headsAt,
    flowsAt,
    first: Array.from({ length: layouts.length * gates.length * curves.length }, () => undefined),
    latest: gates.map(() => ({
      values: new Float64Array(headsAt.length + flowsAt.length),
      index: -1,
    })),
    followed,
    inside: new Float64Array(count),
    reading: gridReading(),
    count: { shared: 0, full: 0 },
  };
}

/** The grid up to the strongest suction that any of the collectors has at an entered point. */
function gridFor({ curves }: StatesQuestion): HeadGrid {
  const strongest = curves.flatMap(({ spline, pressureScale }) =>
    [...spline.y].map((pressure) => pressure * pressureScale),
  );
  return headGridUpTo(Math.max(1, ...strongest) * ROOM);
}
