// The same trees solved by another program: EPANET 2.2 (EPA/600/R-20/133), a public solver for water
// mains, run through epanet-js with the properties of air. Handed its law of friction, ours has to
// agree to what the two can resolve; with Colebrook–White the difference is that of the laws.
import type { Workspace as Engine } from 'epanet-js';
import { beforeAll, describe, expect, it } from 'vitest';
import type { CollectorCurve } from '../../src/curve/collector-curve.ts';
import { colebrook } from '../../src/duct/colebrook.ts';
import type { FrictionLaw } from '../../src/duct/friction-law.ts';
import { swameeJain } from '../../src/duct/swamee-jain.ts';
import { type Balance, balance } from '../../src/solve/balance.ts';
import { buildNetwork } from '../../src/solve/network.ts';
import { createWorkspace } from '../../src/solve/workspace.ts';
import {
  randomCurve,
  randomGates,
  type RandomTree,
  randomTree,
  seededRandom,
  shopCurve,
  shopTree,
} from '../setup/random-tree.ts';
import { say } from '../setup/say.ts';
import { loadWaterEngine, openWaterModel } from '../setup/water-engine.ts';

const AIR = { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 };

/**
 * The engine stops at 1e-8, and reads the collector as 2,000 straight pieces: each bends away by up
 * to 1e-6 of the suction where the curve turns, half of which the flow follows.
 */
const AGREEMENT = 1e-6;
/** Flows below this part of the whole are left out: the engine's 1e-8 is of the sum of all flows. */
const SMALL_FLOW = 1e-4;

/** Swamee and Jain state 1 % in f to roughness 0.01; a flow follows f by half at most. */
const BETWEEN_LAWS = 0.005;
/** The random trees go on to roughness 0.04, where the formula strays further, and to Re 2000–4000. */
const BETWEEN_LAWS_WILD = 0.02;

interface Drawn {
  readonly tree: RandomTree;
  readonly gates: Float64Array;
  readonly curve: CollectorCurve;
}

function wild(seed: number, wyes: 'fixed' | 'momentum'): Drawn {
  const random = seededRandom(seed);
  const tree = randomTree(random, { leaves: 3 + Math.floor(22 * random()), wyes });
  const curve = randomCurve(random, 'falling');
  return { tree, gates: randomGates(random, tree), curve };
}

function usual(seed: number): Drawn {
  const random = seededRandom(seed);
  const leaves = 3 + Math.floor(22 * random());
  const tree = shopTree(random, leaves, 'fixed');
  return { tree, gates: randomGates(random, tree), curve: shopCurve(random, leaves) };
}

function ours({ tree, gates, curve }: Drawn, law: FrictionLaw): Balance {
  const network = buildNetwork(tree.sections, AIR, law);
  const found = balance(network, createWorkspace(network), gates, curve);
  expect(found.residual.worst).toBeLessThan(1e-9);
  return found;
}

/** Loss coefficient of each section, gate in, and wye in as it is at our balance. */
function coefficientsAt({ tree, gates }: Drawn, found: Balance): Float64Array {
  return gates.map((gate, i) => {
    const { fixed, diameter } = tree.sections[i]!;
    const area = (Math.PI / 4) * diameter ** 2;
    const pressure = (AIR.density / 2) * (found.flow[i]! / area) ** 2;
    return fixed + gate + found.losses.join[i]! / pressure;
  });
}

function theirs(engine: Engine, { tree, curve }: Drawn, coefficients: Float64Array, flow: number) {
  const { sections } = tree;
  const model = openWaterModel(engine, {
    sections,
    coefficients,
    curve,
    air: AIR,
    reach: 1.5 * flow,
  });
  model.solve();
  const flows = model.flows();
  model.close();
  return flows;
}

/** Largest relative difference of the flows that count. */
function worstOf(flows: Float64Array, others: readonly number[]): number {
  const total = Math.max(...flows);
  const differences = others
    .map((other, i) => ({ other, difference: Math.abs(flows[i]! / other - 1) }))
    .filter(({ other }) => other > SMALL_FLOW * total)
    .map(({ difference }) => difference);
  expect(differences.length).toBeGreaterThan(2);
  return Math.max(...differences);
}

describe('against an engine for water mains', () => {
  let engine: Engine;
  beforeAll(async () => {
    engine = await loadWaterEngine();
  });

  /** Worst differences of ours, and of ours with Colebrook–White, from the engine. */
  function compare(drawn: readonly Drawn[]): { same: number; colebrook: number } {
    const worst = { same: 0, colebrook: 0 };
    for (const one of drawn) {
      const found = ours(one, swameeJain);
      const coefficients = coefficientsAt(one, found);
      const flows = theirs(engine, one, coefficients, found.point?.flow ?? Number.NaN);
      worst.same = Math.max(worst.same, worstOf(found.flow, flows));
      worst.colebrook = Math.max(worst.colebrook, worstOf(ours(one, colebrook).flow, flows));
    }
    return worst;
  }

  const report = (what: string, count: number, worst: { same: number; colebrook: number }) => {
    say(
      `water engine: ${count} ${what}, worst difference in a flow ${worst.same.toExponential(1)}, ` +
        `with Colebrook–White ${(100 * worst.colebrook).toFixed(2)} %`,
    );
  };

  it('agrees in every flow of 120 random trees', () => {
    const drawn = Array.from({ length: 120 }, (_, i) => wild(i + 1, 'fixed'));
    const worst = compare(drawn);
    report('random trees', drawn.length, worst);
    expect(worst.same).toBeLessThan(AGREEMENT);
    expect(worst.colebrook).toBeLessThan(BETWEEN_LAWS_WILD);
  });

  it('agrees in every flow of 60 trees as shops have them', () => {
    const drawn = Array.from({ length: 60 }, (_, i) => usual(i + 1));
    const worst = compare(drawn);
    report('shop-like trees', drawn.length, worst);
    expect(worst.same).toBeLessThan(AGREEMENT);
    expect(worst.colebrook).toBeLessThan(BETWEEN_LAWS);
  });

  it('agrees where wyes act on each other, their coefficients held at our balance', () => {
    // The engine takes no coefficient below zero, so trees are drawn until enough have none.
    const drawn: Drawn[] = [];
    for (let seed = 1; drawn.length < 50; seed++) {
      const one = wild(seed, 'momentum');
      const coefficients = coefficientsAt(one, ours(one, swameeJain));
      if (coefficients.every((value) => value >= 0)) drawn.push(one);
    }
    const worst = { same: 0, colebrook: 0 };
    for (const one of drawn) {
      const found = ours(one, swameeJain);
      const flows = theirs(
        engine,
        one,
        coefficientsAt(one, found),
        found.point?.flow ?? Number.NaN,
      );
      worst.same = Math.max(worst.same, worstOf(found.flow, flows));
    }
    say(
      `water engine: ${drawn.length} trees with flow-dependent wyes held, ` +
        `worst difference in a flow ${worst.same.toExponential(1)}`,
    );
    expect(worst.same).toBeLessThan(AGREEMENT);
  });
});
