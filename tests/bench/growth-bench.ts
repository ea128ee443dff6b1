// How the time of a warm balance grows with the tree, from 10 to 10,000 open ends: the slope of log
// time against log ends. Gates are drawn anew from solve to solve, so that sweeps count too. All
// sizes take turns, so that whatever disturbs the machine for a while does not tilt the slope.

import { linearRegression } from 'simple-statistics';
import { swameeJain } from '../../src/duct/swamee-jain.ts';
import { buildNetwork } from '../../src/solve/network.ts';
import { settle } from '../../src/solve/settle.ts';
import { createWorkspace } from '../../src/solve/workspace.ts';
import { randomGates, seededRandom, shopCurve, shopTree } from '../setup/random-tree.ts';
import { timed, undisturbed } from './slices.ts';

const AIR = { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 };
const SIZES = [10, 30, 100, 300, 1000, 3000, 10_000];
const TREES = 3;
const STATES = 16;
/** How many sections are gone through in one slice, and in all the slices of a tree. */
const SECTIONS_A_SLICE = 20_000;
const SLICES = 40;

/** Exponent of the growth [-]. */
export function growthExponent(): number {
  const sizes = SIZES.map((leaves) => {
    const random = seededRandom(leaves);
    const slices = Array.from({ length: TREES }, () => sliceOf(random, leaves));
    for (const slice of slices) slice();
    return { leaves, slices, times: slices.map((): number[] => []) };
  });
  for (let turn = 0; turn < SLICES; turn++) {
    for (const { slices, times } of sizes) {
      for (const [tree, slice] of slices.entries()) times[tree]!.push(slice());
    }
  }
  const points = sizes.map(({ leaves, times }) => {
    const mean = times.reduce((sum, slices) => sum + undisturbed(slices), 0) / TREES;
    return [Math.log(leaves), Math.log(mean)];
  });
  return linearRegression(points).m;
}

/** Balances of one tree that, when called, tell the time of one of them [ms]. */
function sliceOf(random: () => number, leaves: number): () => number {
  const tree = shopTree(random, leaves, 'fixed');
  const curve = shopCurve(random, leaves);
  const network = buildNetwork(tree.sections, AIR, swameeJain);
  const work = createWorkspace(network);
  const states = Array.from({ length: STATES }, () => {
    const gates = randomGates(random, tree);
    return Float64Array.from(network.order, (input) => gates[input]!);
  });
  const rounds = Math.max(1, Math.round(SECTIONS_A_SLICE / network.count / STATES));
  const balances = () => {
    for (let round = 0; round < rounds; round++) {
      for (const gate of states) {
        if (settle(network, work, gate, curve) < 0) throw new Error('a tree did not settle');
      }
    }
  };
  return () => timed(balances) / rounds / STATES;
}
