// The worst shop that the decisions are asked of: 40 drops, 12 sizes of main, which is everything that
// more than one drop's air passes, 6 collectors, each drop alone and 20 sets, all of it again for 256 cases of doubt
// and without any. Against a solver for water mains on a sample of the same states: time of its bare
// call, the setting of coefficients taken off, over our time a state. Ours includes everything: making
// the networks and tables of each case, and the figures of every open drop.

import type { Workspace as WaterWorkspace } from 'epanet-js';
import type { CollectorCurve } from '../../src/curve/collector-curve.ts';
import { gateCoefficient } from '../../src/duct/blast-gate.ts';
import { swameeJain } from '../../src/duct/swamee-jain.ts';
import { sobolPoints } from '../../src/math/sobol.ts';
import { buildNetwork, type Network, type SectionInput } from '../../src/solve/network.ts';
import { doubtedStates, type FollowedDrop } from '../../src/study/doubt.ts';
import {
  DOUBTS,
  type DoubtFactors,
  factorsAt,
  USUAL_DOUBT,
} from '../../src/study/doubt-factors.ts';
import {
  doubtedCurve,
  doubtedGates,
  doubtedLayouts,
  type DoubtfulLayout,
  type DoubtfulLayouts,
  doubtfulLayouts,
} from '../../src/study/doubted-network.ts';
import type { StatesQuestion } from '../../src/study/state-plan.ts';
import { type RandomTree, seededRandom, shopCurve, shopTree } from '../setup/random-tree.ts';
import { openWaterModel } from '../setup/water-engine.ts';
import { type BareRound, bareRound, bareTime, together } from './bare-calls.ts';
import { timed } from './slices.ts';

const AIR = { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 };
const DROPS = 40;
/** Inside diameters of the main [m]. */
const SIZES = Array.from({ length: 12 }, (_, k) => 0.15 + 0.025 * k);
const COLLECTORS = 6;
const SETS = 20;
const CASES = 256;
/** The first cases are gone through once before, so that code is compiled. */
const WARM_UP = 4;
const ENGINE_ROUNDS = 5;
/** Air that passes through a pipe reaches from so many times its usual roughness. */
const WALL_RANGE = [0.6, 1.7] as const;

/** What is measured. */
export interface DecisionsBench {
  /** Time of a bare engine call over time of one of our states [-] */
  readonly ratio: number;
  /** States a second [1/s] */
  readonly perSecond: number;
}

interface Worst {
  readonly tree: RandomTree;
  readonly inputs: readonly (readonly SectionInput[])[];
  readonly layouts: readonly DoubtfulLayout[];
  readonly doubtful: DoubtfulLayouts;
  readonly gates: readonly Float64Array[];
  readonly curves: readonly CollectorCurve[];
  readonly followed: readonly FollowedDrop[];
}

/** Both sides in one run. */
export function decisionsVsEngine(water: WaterWorkspace): DecisionsBench {
  const worst = worstShop();
  run(worst, WARM_UP);
  const { gates, curves, layouts } = worst;
  const states = (CASES + 1) * layouts.length * gates.length * curves.length;
  const theirs: BareRound[] = [];
  const engine = () => theirs.push(engineRound(water, worst));
  for (let round = 0; round < ENGINE_ROUNDS; round++) engine();
  const ours = timed(() => run(worst, CASES)) / states;
  for (let round = 0; round < ENGINE_ROUNDS; round++) engine();
  return { ratio: bareTime(theirs) / ours, perSecond: 1000 / ours };
}

function run({ layouts, doubtful, gates, curves, followed }: Worst, cases: number): void {
  const points = sobolPoints(cases, DOUBTS, 1);
  const roundAt = (round: number): StatesQuestion => {
    if (round === 0) return { layouts: layouts.map(({ network }) => network), gates, curves };
    const factors = factorsAt(points[round - 1]!, USUAL_DOUBT);
    return question(doubtful, gates, curves, factors);
  };
  const study = doubtedStates(cases + 1, roundAt, followed);
  let step = study.next();
  while (step.done !== true) step = study.next();
  const wrong = step.value.values.flat().some((values) => !values.every((value) => value > 0));
  if (wrong) throw new RangeError('a state has no operating point');
}

function question(
  doubtful: DoubtfulLayouts,
  gates: readonly Float64Array[],
  curves: readonly CollectorCurve[],
  factors: DoubtFactors,
): StatesQuestion {
  return {
    layouts: doubtedLayouts(doubtful, factors),
    gates: gates.map((each) => doubtedGates(each, factors)),
    curves: curves.map((curve) => doubtedCurve(curve, factors)),
  };
}

function worstShop(): Worst {
  const random = seededRandom(40);
  const tree = shopTree(random, DROPS, 'fixed');
  const inputs = SIZES.map((size) =>
    tree.sections.map((section, i): SectionInput => {
      if (!tree.sections.some(({ into }) => into === i)) return section;
      const frictional = (section.frictional * section.diameter) / size;
      return { ...section, diameter: size, frictional };
    }),
  );
  const layouts = inputs.map((sections) => halved(buildNetwork(sections, AIR, swameeJain)));
  const [{ network }] = layouts as [DoubtfulLayout];
  const ends = tree.openEnds.map((end) => network.order.indexOf(end));
  const sets = Array.from({ length: SETS }, () => ends.filter(() => random() < 3 / DROPS));
  const states = [...ends.map((end) => [end]), ...sets];
  const gates = states.map((open) =>
    network.fixed.map((_, i) => (ends.includes(i) ? gateCoefficient(open.includes(i) ? 1 : 0) : 0)),
  );
  const curves = Array.from({ length: COLLECTORS }, () => shopCurve(random, DROPS / 4));
  const followed = states.flatMap((open, state) =>
    open.map((end) => ({ state, way: Int32Array.from(wayFrom(network, end)) })),
  );
  return { tree, inputs, layouts, doubtful: doubtfulLayouts(layouts), gates, curves, followed };
}

function wayFrom(network: Network, end: number): number[] {
  const way: number[] = [];
  for (let i = end; i >= 0; i = network.parent[i]!) way.push(i);
  return way;
}

/** Half of what a section loses without friction is its hood's, half its fittings'. */
function halved(network: Network): DoubtfulLayout {
  const half = network.fixed.map((value) => value / 2);
  const usual = network.relativeRoughness;
  return {
    network,
    parts: {
      hood: half,
      fitting: half,
      fittingFrictional: new Float64Array(network.count),
      wall: network.frictional,
      usual,
      smoothest: usual.map((value) => WALL_RANGE[0] * value),
      roughest: usual.map((value) => WALL_RANGE[1] * value),
      isHose: new Uint8Array(network.count),
    },
  };
}

/** One round of bare calls, over all sizes and states and each size on another collector. */
function engineRound(water: WaterWorkspace, worst: Worst): BareRound {
  const { tree, inputs, layouts, gates, curves } = worst;
  const rounds = inputs.map((sections, k) => {
    const curve = curves[k % curves.length]!;
    const { order } = layouts[k]!.network;
    const coefficients = sections.map(({ fixed, join }) =>
      join.kind === 'fixed' ? fixed + join.coefficient : fixed,
    );
    const reach = curve.spline.x.at(-1)! * 1.2;
    const model = openWaterModel(water, { sections, coefficients, curve, air: AIR, reach });
    const places = tree.openEnds.map((end) => [end, order.indexOf(end)] as const);
    const round = bareRound(model, gates, (gate) => {
      for (const [end, place] of places) {
        model.setCoefficient(end, coefficients[end]! + gate[place]!);
      }
    });
    model.close();
    return round;
  });
  return together(rounds, inputs.length * gates.length);
}
