// Time of the water engine's bare call without the setting of coefficients before it. The two are
// summed up apart over many slices, and each has its undisturbed time: in a difference taken slice by
// slice a disturbed setting would count in our disfavour, and the least of such differences picks the
// slices where that was worst.

import type { WaterModel } from '../setup/water-engine.ts';
import { timed, undisturbed } from './slices.ts';

/** One round over some states, in [ms] a call. */
export interface BareRound {
  readonly both: number;
  readonly setting: number;
}

/** Goes through states with the bare call, then with the setting alone; times in sum [ms]. */
export function bareRound<State>(
  model: WaterModel,
  states: readonly State[],
  set: (state: State) => void,
): BareRound {
  const both = timed(() => {
    for (const state of states) {
      set(state);
      model.solveBare();
    }
  });
  return { both, setting: timed(() => states.forEach(set)) };
}

/** Rounds one after the other as one, each over so many calls [ms]. */
export function together(rounds: readonly BareRound[], calls: number): BareRound {
  const sum = (part: (round: BareRound) => number) =>
    rounds.reduce((all, round) => all + part(round), 0) / calls;
  return { both: sum(({ both }) => both), setting: sum(({ setting }) => setting) };
}

/** The undisturbed time of a bare call [ms]. */
export function bareTime(rounds: readonly BareRound[]): number {
  return (
    undisturbed(rounds.map(({ both }) => both)) - undisturbed(rounds.map(({ setting }) => setting))
  );
}
