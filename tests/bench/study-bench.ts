// All gate patterns of a shop of 12 drops on 5 collectors and 6 sizes of main, against a solver for
// water mains on a sample of the same states: time a state on its side over time a state on ours.
// Ours includes building the networks and tables of each main, and gives the flow of every section.

import type { Workspace as WaterWorkspace } from 'epanet-js';
import { availableSuction, type CollectorCurve } from '../../src/curve/collector-curve.ts';
import { gateCoefficient } from '../../src/duct/blast-gate.ts';
import { swameeJain } from '../../src/duct/swamee-jain.ts';
import { buildNetwork, type SectionInput } from '../../src/solve/network.ts';
import {
  type PatternTables,
  patternFlows,
  patternPoint,
  patternTables,
  takeUpPattern,
} from '../../src/study/gate-patterns.ts';
import { type HeadGrid, headGridUpTo } from '../../src/study/head-grid.ts';
import { type RandomTree, seededRandom, shopCurve, shopTree } from '../setup/random-tree.ts';
import { openWaterModel } from '../setup/water-engine.ts';
import { type BareRound, bareRound, bareTime, together } from './bare-calls.ts';
import { timed, undisturbed } from './slices.ts';

const AIR = { density: 1.2, viscosity: 1.81e-5, pressure: 101325 };
const DROPS = 12;
const PATTERNS = 2 ** DROPS;
const MAIN_SIZES = [0.8, 0.9, 1, 1.1, 1.2, 1.3];
/** A section that carries at least this many drops counts as the main. */
const MAIN_DROPS = 4;
const ENGINE_STATES = 150;
const ROUNDS = 8;
const SHUT = gateCoefficient(0);
const OPEN = gateCoefficient(1);

/** Time of a bare engine call over time of one state of the study [-]. */
export function studyVsEngine(water: WaterWorkspace): number {
  const random = seededRandom(12);
  const tree = shopTree(random, DROPS, 'fixed');
  const curves = Array.from({ length: 5 }, () => shopCurve(random, DROPS));
  const grid = headGridUpTo(Math.max(...curves.map((curve) => availableSuction(curve, 0))));
  const layouts = MAIN_SIZES.map((size) => withMain(tree, size));
  const ours: number[] = [];
  const theirs: BareRound[] = [];
  for (let round = 0; round <= ROUNDS; round++) {
    let states = 0;
    const time = timed(() => {
      states = study(layouts, curves, grid);
    });
    ours.push(time / states);
    theirs.push(engineRound(water, tree, layouts, curves));
  }
  return bareTime(theirs.slice(1)) / undisturbed(ours.slice(1));
}

function withMain(tree: RandomTree, size: number): SectionInput[] {
  const drops = tree.sections.map(() => 0);
  for (const end of tree.openEnds) {
    for (let i = end; i >= 0; i = tree.sections[i]!.into) drops[i]!++;
  }
  return tree.sections.map((section, i) => {
    if (drops[i]! < MAIN_DROPS) return section;
    return { ...section, diameter: section.diameter * size, frictional: section.frictional / size };
  });
}

/** Every state; returns how many there were. */
function study(
  layouts: readonly SectionInput[][],
  curves: readonly CollectorCurve[],
  grid: HeadGrid,
): number {
  let tables: PatternTables | undefined;
  let states = 0;
  for (const layout of layouts) {
    const network = buildNetwork(layout, AIR, swameeJain);
    const isEnd = (i: number) => network.firstInlet[i] === network.endInlet[i];
    const gates = (k: number) => network.fixed.map((_, i) => (isEnd(i) ? k : 0));
    tables = patternTables(network, { shut: gates(SHUT), open: gates(OPEN) }, grid, tables);
    const flows = new Float64Array(network.count);
    let head = 20;
    for (let pattern = 0; pattern < PATTERNS; pattern++) {
      takeUpPattern(tables, pattern);
      for (const curve of curves) {
        head = patternPoint(tables, curve, head);
        if (Number.isNaN(head)) throw new RangeError(`no operating point in pattern ${pattern}`);
        patternFlows(tables, head, flows);
        states++;
      }
    }
  }
  return states;
}

/** One round of bare calls over a sample of the states. */
function engineRound(
  water: WaterWorkspace,
  tree: RandomTree,
  layouts: readonly SectionInput[][],
  curves: readonly CollectorCurve[],
): BareRound {
  const random = seededRandom(99);
  const rounds: BareRound[] = [];
  for (const [i, sections] of layouts.entries()) {
    const curve = curves[i % curves.length]!;
    const constant = sections.map((section) => {
      const { join, fixed } = section;
      return join.kind === 'fixed' ? fixed + join.coefficient : fixed;
    });
    const patterns = Array.from({ length: ENGINE_STATES }, () => Math.floor(PATTERNS * random()));
    const reach = curve.spline.x.at(-1)! * 1.2;
    const coefficients = constant;
    const model = openWaterModel(water, { sections, coefficients, curve, air: AIR, reach });
    const set = (pattern: number) => {
      for (const [k, end] of tree.openEnds.entries()) {
        model.setCoefficient(end, constant[end]! + (pattern & (1 << k) ? OPEN : SHUT));
      }
    };
    rounds.push(bareRound(model, patterns, set));
    model.close();
  }
  return together(rounds, layouts.length * ENGINE_STATES);
}
