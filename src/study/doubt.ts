// The same states again and again with everything a little off, and the figures of some drops each
// time. The first round is with nothing off.

import { areasOf, type DropWay, emptyFigures, readFigures } from './drop-figures.ts';
import type { Study } from './progress.ts';
import type { StatesQuestion } from './state-plan.ts';
import { beginRound, solveState } from './state-solver.ts';
import { stateSolver } from './state-workspace.ts';

/** A drop in a state that is followed. */
export interface FollowedDrop extends DropWay {
  /** Which setting of the gates [-]. */
  readonly state: number;
}

/** Figures of one followed drop on one layout and collector: one number a round each. */
export interface DoubtedFigures {
  /** Flow into the drop [m³/s]; 0 in a round without an operating point */
  readonly flow: Float64Array;
  /** Speed in its own section [m/s] */
  readonly velocity: Float64Array;
  /** Lowest speed on its way [m/s] */
  readonly slowest: Float64Array;
}

/** What came of all rounds. */
export interface DoubtedStates {
  readonly rounds: number;
  readonly followed: number;
  /** By layout, then by collector: flow [m³/s], speed and lowest speed [m/s] of each drop a round. */
  readonly values: readonly (readonly Float64Array[])[];
  /** States that were solved by shared tables and in full [-] */
  readonly count: { readonly shared: number; readonly full: number };
}

/**
 * The figures of one drop on one layout and collector.
 * @param states - what came of all rounds
 * @param layout - which layout [-]
 * @param curve - which collector [-]
 * @param followed - which of the followed drops [-]
 * @returns its figures round by round
 */
export function figuresOf(
  states: DoubtedStates,
  layout: number,
  curve: number,
  followed: number,
): DoubtedFigures {
  const values = states.values[layout]![curve]!;
  const column = (figure: number) =>
    Float64Array.from(
      { length: states.rounds },
      (_, round) => values[3 * (round * states.followed + followed) + figure]!,
    );
  return { flow: column(0), velocity: column(1), slowest: column(2) };
}

/**
 * Solves the states of a study round after round. A step is one layout in one round, the first one
 * making ready.
 * @param rounds - how many, the first included, 1 or more [-]
 * @param roundAt - the numbers of a round; all of one form, and round 0 with nothing off
 * @param followed - drops whose figures are kept
 * @returns a study with the figures of every followed drop
 */
export function* doubtedStates(
  rounds: number,
  roundAt: (round: number) => StatesQuestion,
  followed: readonly FollowedDrop[],
): Study<DoubtedStates> {
  const first = roundAt(0);
  const { layouts, gates, curves } = first;
  const byState = gates.map(() => [] as { readonly drop: FollowedDrop; readonly index: number }[]);
  followed.forEach((drop, index) => byState[drop.state]!.push({ drop, index }));
  const ends = byState.map((drops) => drops.map(({ drop }) => drop.way[0]!));
  const total = rounds * layouts.length;
  const solver = stateSolver(first, ends);
  yield { done: 0, total };
  const areas = layouts.map(areasOf);
  const values = layouts.map(() =>
    curves.map(() => new Float64Array(3 * rounds * followed.length)),
  );
  const read = emptyFigures();
  for (let round = 0; round < rounds; round++) {
    if (round > 0) beginRound(solver, roundAt(round));
    for (let layout = 0; layout < layouts.length; layout++) {
      for (let state = 0; state < gates.length; state++) {
        for (let curve = 0; curve < curves.length; curve++) {
          if (solveState(solver, layout, state, curve) === 'none') continue;
          for (const { drop, index } of byState[state]!) {
            readFigures(drop, solver.work.flow, areas[layout]!, read);
            const kept = values[layout]![curve]!;
            const at = 3 * (round * followed.length + index);
            kept[at] = read.flow;
            kept[at + 1] = read.velocity;
            kept[at + 2] = read.slowest;
          }
        }
      }
      yield { done: round * layouts.length + layout + 1, total };
    }
  }
  return { rounds, followed: followed.length, values, count: { ...solver.count } };
}
