// How the time of a warm balance grows with the tree, from 10 to 10,000 open ends: the slope of log
// time against log ends. Gates are drawn anew from solve to solve, so that sweeps count too.

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
  const points = SIZES.map((leaves) => [Math.log(leaves), Math.log(timeOf(leaves))]);
  return linearRegression(points).m;
}

/** Time of one balance [ms]. */
function timeOf(leaves: number): number {
  const random = seededRandom(leaves);
  let sum = 0;
  for (let tree = 0; tree < TREES; tree++) sum += timeOnOneTree(random, leaves);
  return sum / TREES;
}

function timeOnOneTree(random: () => number, leaves: number): number {
  const tree = shopTree(random, leaves, 'fixed');
  const curve = shopCurve(random, leaves);
  const network = buildNetwork(tree.sections, AIR, swameeJain);
  const work = createWorkspace(network);
  const states = Array.from({ length: STATES }, () => {
    const gates = randomGates(random, tree);
    return Float64Array.from(network.order, (input) => gates[input]!);
  });
  const rounds = Math.max(1, Math.round(SECTIONS_A_SLICE / network.count / STATES));
  const slice = () => {
    for (let round = 0; round < rounds; round++) {
      for (const gate of states) {
        if (settle(network, work, gate, curve) < 0) throw new Error('a tree did not settle');
      }
    }
  };
  slice();
  const times = Array.from({ length: SLICES }, () => timed(slice) / rounds / STATES);
  return undisturbed(times);
}
