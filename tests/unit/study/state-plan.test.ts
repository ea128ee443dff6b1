import { describe, expect, it } from 'vitest';
import { gateCoefficient } from '../../../src/duct/blast-gate.ts';
import { colebrook } from '../../../src/duct/colebrook.ts';
import { findCrossings } from '../../../src/solve/balance.ts';
import { buildNetwork, type Network, type SectionInput } from '../../../src/solve/network.ts';
import { createWorkspace } from '../../../src/solve/workspace.ts';
import { planStates, type StatesQuestion } from '../../../src/study/state-plan.ts';
import { beginRound, solveState } from '../../../src/study/state-solver.ts';
import { stateSolver } from '../../../src/study/state-workspace.ts';
import { seededRandom, shopCurve } from '../../setup/random-tree.ts';

const AIR = { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 };
const momentum = (angle: number) => ({ kind: 'momentum', angle }) as const;

/** A main of three sections; from each joins an arm of four drops with a trunk of its own. */
function armed(mainDiameter: number): SectionInput[] {
  const pipe = (into: number, diameter: number, angle: number, fixed: number): SectionInput => ({
    into,
    diameter,
    roughness: 9e-5,
    frictional: 3 / diameter,
    fixed,
    join: momentum(angle),
  });
  const sections: SectionInput[] = [];
  for (let k = 0; k < 3; k++) {
    sections.push(pipe(k === 0 ? -1 : k - 1, mainDiameter, 0, 0.2));
  }
  for (let arm = 0; arm < 4; arm++) {
    const from = Math.min(arm, 2);
    sections.push(pipe(from, 0.16, arm === 3 ? 0 : 0.8, 0.1));
    let trunk = sections.length - 1;
    for (let drop = 0; drop < 4; drop++) {
      sections.push(pipe(trunk, 0.1 + 0.01 * drop, 0.8, 1));
      if (drop === 2) continue;
      if (drop < 2) {
        sections.push(pipe(trunk, 0.15, 0, 0.1));
        trunk = sections.length - 1;
      }
    }
  }
  return sections;
}

function questionOf(sizes: readonly number[]): StatesQuestion & { ends: number[][] } {
  const layouts = sizes.map((size) => buildNetwork(armed(size), AIR, colebrook));
  const [network] = layouts as [Network];
  const open = [...network.parent.keys()].filter(
    (i) => network.firstInlet[i] === network.endInlet[i],
  );
  const ends = [...open.map((end) => [end]), ...open.map((end, k) => [end, open[(k + 5) % 16]!])];
  const gates = ends.map((each) =>
    network.fixed.map((_, i) => (open.includes(i) ? gateCoefficient(each.includes(i) ? 1 : 0) : 0)),
  );
  const random = seededRandom(3);
  const curves = Array.from({ length: 12 }, () => shopCurve(random, 4));
  return { layouts, gates, curves, ends };
}

describe('the plan of a study', () => {
  const sizes = [0.15, 0.16, 0.18, 0.2, 0.22, 0.24, 0.26, 0.28, 0.3, 0.32, 0.34, 0.36];
  const question = questionOf(sizes);
  const { solved, isTabulated, settings, examples } = planStates(question);
  const [network] = question.layouts as [Network];

  it('solves the main that differs, and tabulates whole arms that do not', () => {
    expect(network.count).toBe(3 + 4 * 7);
    expect(Array.from(solved, (place) => network.order[place])).toEqual([0, 1, 2]);
    expect(isTabulated.reduce((a, b) => a + b)).toBe(28);
  });

  it('counts the settings of an arm by its own gates', () => {
    const arm = network.firstInlet[0]! + 1;
    const own = [...settings[arm]!];
    expect(examples[arm]!.length).toBe(new Set(own).size);
    own.forEach((setting, state) => {
      const shown = question.gates[examples[arm]![setting]!]!;
      const upstream = (i: number): boolean => i === arm || (i > 0 && upstream(network.parent[i]!));
      for (let i = 0; i < network.count; i++) {
        if (upstream(i)) expect(question.gates[state]![i]).toBe(shown[i]);
      }
    });
  });

  it('tabulates nothing where a table would be read too seldom', () => {
    const few = { ...question, curves: question.curves.slice(0, 1), layouts: [network] };
    expect(planStates(few).solved).toHaveLength(network.count);
  });

  it('tabulates nothing where the inlets of a wye share no head', () => {
    const uneven = (section: SectionInput, i: number): SectionInput => ({
      ...section,
      join: { kind: 'fixed', coefficient: 0.1 + 0.01 * i, of: 'combined' },
    });
    const layouts = sizes.map((size) => buildNetwork(armed(size).map(uneven), AIR, colebrook));
    expect(planStates({ ...question, layouts }).solved).toHaveLength(network.count);
  });

  it('refuses layouts that differ in form, and none at all', () => {
    const other = buildNetwork(armed(0.2).slice(0, 10), AIR, colebrook);
    expect(() => planStates({ ...question, layouts: [network, other] })).toThrow('differ in form');
    expect(() => planStates({ ...question, layouts: [] })).toThrow('no layout');
  });

  it('gives the flows within an arm that is tabulated whole', () => {
    const solver = stateSolver(question, question.ends);
    let worst = 0;
    for (const round of [0, 1]) {
      if (round > 0) beginRound(solver, question);
      for (const [l, layout] of question.layouts.entries()) {
        const work = createWorkspace(layout);
        for (const [s, gate] of question.gates.entries()) {
          for (const [c, curve] of question.curves.entries()) {
            expect(solveState(solver, l, s, c)).toBe('solved');
            if (c % 5 !== 0) continue;
            findCrossings(layout, work, gate, curve);
            for (const end of question.ends[s]!) {
              for (let i = end; i >= 0; i = layout.parent[i]!) {
                worst = Math.max(worst, Math.abs(solver.work.flow[i]! / work.flow[i]! - 1));
              }
            }
          }
        }
      }
    }
    // Heads pass through two tables on their way up an arm.
    expect(worst).toBeLessThan(2e-5);
    expect(solver.count.shared).toBe(solver.count.full);
  });
});
