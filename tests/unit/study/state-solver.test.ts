// Shared states against full solves of the same numbers, one by one.
import { describe, expect, it } from 'vitest';
import { colebrook } from '../../../src/duct/colebrook.ts';
import { findCrossings } from '../../../src/solve/balance.ts';
import { buildNetwork, type Network, type SectionInput } from '../../../src/solve/network.ts';
import { createWorkspace } from '../../../src/solve/workspace.ts';
import { type StatesQuestion } from '../../../src/study/state-plan.ts';
import { beginRound, solveState } from '../../../src/study/state-solver.ts';
import { stateSolver } from '../../../src/study/state-workspace.ts';
import { gateCoefficient } from '../../../src/duct/blast-gate.ts';
import {
  type Random,
  type RandomTree,
  seededRandom,
  shopCurve,
  shopTree,
} from '../../setup/random-tree.ts';
import { say } from '../../setup/say.ts';

const AIR = { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 };
const SIZES = [0.8, 1, 1.25];

interface Case {
  readonly tree: RandomTree;
  readonly question: StatesQuestion;
  /** Of each state: open ends that are open, in the network's order. */
  readonly ends: readonly (readonly number[])[];
}

/** Sections that more than one drop's air passes change size; the gates are each alone, and pairs. */
function randomCase(random: Random, drops: number, wyes: 'momentum' | 'fixed'): Case {
  const tree = shopTree(random, drops, wyes);
  const isMain = tree.sections.map((_, i) => tree.sections.some(({ into }) => into === i));
  const layouts = SIZES.map((size) =>
    buildNetwork(
      tree.sections.map((section, i) => (isMain[i] ? scaled(section, size) : section)),
      AIR,
      colebrook,
    ),
  );
  const places = tree.openEnds.map((end) => layouts[0]!.order.indexOf(end));
  const states = [
    ...places.map((place) => [place]),
    ...places.map((place, k) => [place, places[(3 * k + 1) % places.length]!]),
  ];
  const curves = Array.from({ length: 4 }, () => shopCurve(random, drops));
  return {
    tree,
    question: { layouts, gates: gatesOf(layouts[0]!, states, 1), curves },
    ends: states,
  };
}

function scaled(section: SectionInput, size: number): SectionInput {
  return { ...section, diameter: size * section.diameter, frictional: section.frictional / size };
}

function gatesOf(network: Network, states: readonly (readonly number[])[], factor: number) {
  return states.map((open) =>
    Float64Array.from({ length: network.count }, (_, i) => {
      if (network.firstInlet[i] !== network.endInlet[i]) return 0;
      return factor * gateCoefficient(open.includes(i) ? 1 : 0);
    }),
  );
}

/** The same question with all coefficients a little different. */
function changed({ question, ends }: Case, factor: number): StatesQuestion {
  const layouts = question.layouts.map((network) => ({
    ...network,
    fixed: network.fixed.map((value) => factor * value),
    own: network.own.map((value) => factor * value),
    cross: network.cross.map((value) => factor * value),
    combined: network.combined.map((value) => factor * value),
    shared: network.shared.map((value) => factor * value),
  }));
  const curves = question.curves.map((curve) => ({
    ...curve,
    pressureScale: curve.pressureScale * (2 - factor),
  }));
  return { layouts, gates: gatesOf(layouts[0]!, ends, factor), curves };
}

describe.each(['momentum', 'fixed'] as const)('states of shops with %s wyes', (wyes) => {
  it('have the flows of full solves, in every round', () => {
    const random = seededRandom(40);
    const worst = { open: 0, total: 0 };
    const count = { shared: 0, full: 0 };
    for (const drops of [3, 8, 20, 20]) {
      const each = randomCase(random, drops, wyes);
      const solver = stateSolver(each.question, each.ends);
      for (const factor of [1, 0.85, 1.17]) {
        const question = changed(each, factor);
        beginRound(solver, question);
        const work = createWorkspace(question.layouts[0]!);
        for (const [l, network] of question.layouts.entries()) {
          for (const [s, gate] of question.gates.entries()) {
            for (const [c, curve] of question.curves.entries()) {
              expect(solveState(solver, l, s, c)).toBe('solved');
              expect(findCrossings(network, work, gate, curve)).toHaveLength(1);
              const gap = (i: number) => Math.abs(solver.work.flow[i]! / work.flow[i]! - 1);
              worst.total = Math.max(worst.total, gap(0));
              for (const end of each.ends[s]!) {
                for (let i = end; i >= 0; i = network.parent[i]!) {
                  worst.open = Math.max(worst.open, gap(i));
                }
              }
            }
          }
        }
      }
      count.shared += solver.count.shared;
      count.full += solver.count.full;
    }
    say(
      `shared states, ${wyes} wyes: ${count.shared} shared, ${count.full} in full, worst gap of a ` +
        `flow on an open drop's way ${worst.open.toExponential(1)}, at the flange ${worst.total.toExponential(1)}`,
    );
    // Tables are cubics over 48 heads, and two sweeps leave an error of the square of 3e-4.
    expect(worst.open).toBeLessThan(1e-5);
    expect(worst.total).toBeLessThan(2e-6);
    // All but the first of three rounds.
    expect(count.shared).toBeCloseTo(2 * count.full, -1);
  });
});
