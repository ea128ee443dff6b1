// Thousands of random trees, none of which may end in NaN, in silence or badly balanced. They are
// wilder than any shop: a 50 mm pipe of 40 m beside one of 300 mm and 0.1 m, humped curves, leaks.
//
// TREES=20000 npx vitest run --project core tests/unit/solve/random-trees
import { describe, expect, it } from 'vitest';
import type { CollectorCurve } from '../../../src/curve/collector-curve.ts';
import { colebrook } from '../../../src/duct/colebrook.ts';
import { type Balance, balance, CLOSING } from '../../../src/solve/balance.ts';
import { buildNetwork, type Network } from '../../../src/solve/network.ts';
import { settleAtFlow } from '../../../src/solve/settle.ts';
import { createWorkspace } from '../../../src/solve/workspace.ts';
import {
  type Random,
  randomCurve,
  randomGates,
  type RandomTree,
  randomTree,
  seededRandom,
} from '../../setup/random-tree.ts';
import { say } from '../../setup/say.ts';
import { windingCurve } from '../../setup/winding-curve.ts';

const TREES = Number(process.env['TREES'] ?? 5000);
/** For the whole test, on a busy machine [ms]. */
const PATIENCE = 600_000;
/** The first state begins from nothing, each further one from the one before. */
const STATES = 2;
const SHAPES = ['falling', 'falling', 'humped', 'humped', 'winding'] as const;
const AIR = { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 };
const WYES = ['momentum', 'own', 'momentum', 'combined'] as const;

function treeOf(random: Random, seed: number): RandomTree {
  const leaves = 2 + Math.floor(59 * random());
  const wyes = WYES[seed % WYES.length]!;
  if (wyes === 'momentum') return randomTree(random, { leaves, wyes });
  const tree = randomTree(random, { leaves, wyes: 'fixed' });
  return wyes === 'own' ? tree : onCombinedStream(random, tree);
}

/** The same coefficient for all inlets of a wye; unequal ones may leave a branch nothing to draw. */
function onCombinedStream(random: Random, tree: RandomTree): RandomTree {
  const coefficients = tree.sections.map(() => 0.6 * random());
  const sections = tree.sections.map((section) => {
    const coefficient = coefficients[section.into] ?? 0;
    return { ...section, join: { kind: 'fixed', coefficient, of: 'combined' } as const };
  });
  return { ...tree, sections };
}

/** Of one curve in five the shape is made for the tree, so that it meets its ducts more than once. */
function curveFor(random: Random, network: Network, tree: RandomTree): CollectorCurve {
  const shape = SHAPES[Math.floor(random() * SHAPES.length)]!;
  if (shape !== 'winding') return randomCurve(random, shape);
  const work = createWorkspace(network);
  const gates = randomGates(random, tree);
  const gate = Float64Array.from(network.order, (input) => gates[input]!);
  const suctionAt = (flow: number) => {
    settleAtFlow(network, work, gate, Math.max(flow, 1e-9));
    return work.suction[0]!;
  };
  return windingCurve(random, suctionAt, 0.05 * 40 ** random());
}

/** What is wrong with a balance, in words; undefined when nothing is. */
function faultOf(found: Balance): string | undefined {
  const { point, crossings, flow, losses, residual, difficulties } = found;
  const numbers = [...flow, ...losses.section, ...losses.join, residual.mass, residual.pressure];
  for (const crossing of crossings) numbers.push(crossing.flow, crossing.suction);
  if (!numbers.every(Number.isFinite)) return 'holds a number that is none';
  if (!point) return `has no crossing, though every one of these curves begins above zero`;
  if (!flow.every((value) => value > 0)) return 'has a section that nothing flows through';
  if (!(residual.worst <= CLOSING)) return `closes to ${residual.worst} at ${residual.section}`;
  if (difficulties.some(({ kind }) => kind === 'did not balance')) return 'says it did not balance';
  const isSaid = difficulties.some(({ kind }) => kind === 'several crossings');
  if (isSaid !== crossings.length > 1) return `keeps quiet about ${crossings.length} crossings`;
  return undefined;
}

describe(`${TREES} random trees of 2 to 60 open ends`, () => {
  it(
    'balance in every state of their gates, or say what is the matter',
    () => {
      const faults: string[] = [];
      const seen = { balances: 0, several: 0, leftOfPeak: 0, pastPoints: 0, worst: 0 };
      for (let seed = 1; seed <= TREES; seed++) {
        const random = seededRandom(seed);
        const tree = treeOf(random, seed);
        const network = buildNetwork(tree.sections, AIR, colebrook);
        const curve = curveFor(random, network, tree);
        const work = createWorkspace(network);
        for (let state = 1; state <= STATES; state++) {
          const found = balance(network, work, randomGates(random, tree), curve);
          const fault = faultOf(found);
          if (fault !== undefined) faults.push(`tree ${seed}, state ${state} ${fault}`);
          const kinds = found.difficulties.map(({ kind }) => kind);
          seen.balances += 1;
          seen.several += Number(kinds.includes('several crossings'));
          seen.leftOfPeak += Number(kinds.includes('left of the peak'));
          seen.pastPoints += Number(kinds.includes('curve ends'));
          seen.worst = Math.max(seen.worst, found.residual.worst);
        }
      }
      say(
        `random trees: ${TREES}, ${seen.balances} balances, ${faults.length} at fault, ` +
          `worst residual ${seen.worst.toExponential(1)} (${seen.several} with several crossings, ` +
          `${seen.leftOfPeak} left of the peak, ${seen.pastPoints} past the entered points)`,
      );
      expect(faults).toEqual([]);
      // The trees must really have met what is hard, or the above says little.
      for (const count of [seen.several, seen.leftOfPeak, seen.pastPoints]) {
        expect(count).toBeGreaterThan(TREES / 50);
      }
    },
    PATIENCE,
  );
});
