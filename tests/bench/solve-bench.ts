// One warm balance after another, on trees as shops have them, each with gates drawn anew: ours
// against EPANET 2.2 run through epanet-js, in the same process and on the same trees.
//
// - Both have the same pipes, gates, collector and law of friction (Swamee–Jain), and stop at 1e-8.
// - Both begin each solve from the flows of the one before. Half of the gates have moved.
// - Ours takes up the gates inside the time measured, and leaves every flow in its workspace.
// - The engine's bare call sets and reads nothing: the setting of gates, one by one through its
//   interface, is measured apart and taken off, in its favour.
// - Its interface is timed for what ours does in the same time: gates set, solved, flows read.
// - Flow-dependent wyes are on our side only: the engine solves the same tree with wyes that cost
//   nothing, since it knows no others.
// - Spans of our friction table are filled before, as they are in any session after its first steps.

import type { Workspace as Engine } from 'epanet-js';
import { swameeJain } from '../../src/duct/swamee-jain.ts';
import { buildNetwork } from '../../src/solve/network.ts';
import { settle } from '../../src/solve/settle.ts';
import { createWorkspace } from '../../src/solve/workspace.ts';
import { randomGates, seededRandom, shopCurve, shopTree } from '../setup/random-tree.ts';
import { openWaterModel } from '../setup/water-engine.ts';
import { timed, undisturbed } from './slices.ts';

const AIR = { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 };
const TREES = 6;
const SLICES = 20;
/** Ours is the quicker: it goes so often through the states where the engine goes through once. */
const OUR_ROUNDS = 8;
const STATES = 50;
/** Slices that do not count: code is compiled and spans of the friction table are filled. */
const WARM_UP = 5;

/** One state of the gates, in the order of the tree and in that of the network [-]. */
interface State {
  readonly gates: Float64Array;
  readonly ordered: Float64Array;
}

/** Time of theirs over time of ours. */
export interface Ratios {
  readonly engine: number;
  readonly api: number;
}

/** Times one solve on each side, as the mean over several trees [ms]. */
export function solveBench(engine: Engine, leaves: number, wyes: 'fixed' | 'momentum'): Ratios {
  const random = seededRandom(leaves);
  const sum = { ours: 0, bare: 0, api: 0 };
  for (let tree = 0; tree < TREES; tree++) {
    const times = timesOnOneTree(engine, random, leaves, wyes);
    sum.ours += times.ours;
    sum.bare += times.bare;
    sum.api += times.api;
  }
  return { engine: sum.bare / sum.ours, api: sum.api / sum.ours };
}

function timesOnOneTree(
  engine: Engine,
  random: () => number,
  leaves: number,
  wyes: 'fixed' | 'momentum',
): { ours: number; bare: number; api: number } {
  const tree = shopTree(random, leaves, wyes);
  const curve = shopCurve(random, leaves);
  const network = buildNetwork(tree.sections, AIR, swameeJain);
  const work = createWorkspace(network);
  const states = Array.from({ length: STATES }, (): State => {
    const gates = randomGates(random, tree);
    return { gates, ordered: Float64Array.from(network.order, (input) => gates[input]!) };
  });
  const coefficients = tree.sections.map(({ fixed, join }) =>
    join.kind === 'fixed' ? fixed + join.coefficient : fixed,
  );
  const ours = ({ ordered }: State) => {
    if (settle(network, work, ordered, curve) < 0) throw new Error('a tree did not settle');
  };
  ours(states[0]!);
  const reach = curve.spline.x.at(-1)! * 1.2;
  const model = openWaterModel(engine, { ...tree, coefficients, curve, air: AIR, reach });
  const set = ({ gates }: State) => {
    for (const end of tree.openEnds) model.setCoefficient(end, coefficients[end]! + gates[end]!);
  };
  const bare = (state: State) => {
    set(state);
    model.solveBare();
  };
  const api = (state: State) => {
    set(state);
    model.solve();
    model.flows();
  };

  const times = {
    ours: [] as number[],
    set: [] as number[],
    bare: [] as number[],
    api: [] as number[],
  };
  const slice = (solve: (state: State) => void, rounds: number) =>
    timed(() => {
      for (let round = 0; round < rounds; round++) states.forEach(solve);
    }) /
    states.length /
    rounds;
  for (let i = 0; i < WARM_UP + SLICES; i++) {
    times.ours.push(slice(ours, OUR_ROUNDS));
    times.set.push(slice(set, 1));
    times.bare.push(slice(bare, 1));
    times.api.push(slice(api, 1));
  }
  model.close();
  const timeOf = (all: readonly number[]) => undisturbed(all.slice(WARM_UP));
  return {
    ours: timeOf(times.ours),
    bare: timeOf(times.bare) - timeOf(times.set),
    api: timeOf(times.api),
  };
}
