import { describe, expect, it } from 'vitest';
import { colebrook } from '../../../src/duct/colebrook.ts';
import { fillSpan } from '../../../src/solve/friction-table.ts';
import { lossesAt, residualOf } from '../../../src/solve/losses.ts';
import { buildNetwork, type Network } from '../../../src/solve/network.ts';
import { settleAtFlow } from '../../../src/solve/settle.ts';
import { sweepDown, sweepUp } from '../../../src/solve/sweep.ts';
import { createWorkspace, type Workspace } from '../../../src/solve/workspace.ts';
import { type RandomTree, randomTree, seededRandom } from '../../setup/random-tree.ts';

const AIR = { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 };
const TREES = Array.from({ length: 60 }, (_, i) => i + 1);

/** Friction that does not change: as fixed coefficients, which is what it then is. */
function withConstantFriction(tree: RandomTree): RandomTree {
  const sections = tree.sections.map((section) => ({
    ...section,
    frictional: 0,
    fixed: section.fixed + 0.02 * section.frictional,
  }));
  return { ...tree, sections };
}

const isEnd = (network: Network, i: number) => network.firstInlet[i] === network.endInlet[i];

/** Flows at the open ends drawn at random over four decades. */
function scatter(network: Network, work: Workspace, random: () => number): void {
  for (let i = 0; i < network.count; i++) {
    if (isEnd(network, i)) work.flow[i] = 1e-4 * 1e4 ** random();
  }
}

function up(network: Network, work: Workspace): void {
  let from = sweepUp(network, work, network.count - 1);
  while (from >= 0) {
    fillSpan(network.friction, from, network.reynolds[from]! * work.flow[from]!);
    from = sweepUp(network, work, from);
  }
}

describe('where friction is constant', () => {
  it.each(TREES)('one step from anywhere balances tree %i', (seed) => {
    const random = seededRandom(seed);
    const wyes = seed % 2 === 0 ? 'momentum' : 'fixed';
    const wild = randomTree(random, { leaves: 2 + (seed % 40), wyes });
    const network = buildNetwork(withConstantFriction(wild).sections, AIR, colebrook);
    const work = createWorkspace(network);
    scatter(network, work, random);
    up(network, work);
    sweepDown(network, work, 0.3 - work.flow[0]!);
    up(network, work);
    expect(work.flow[0]).toBeCloseTo(0.3, 12);
    const losses = lossesAt(network, work.gate, work.flow);
    // Rounding alone, carried along paths of some ten sections and through wyes of a hundred to one.
    expect(residualOf(network, losses, work.flow, work.suction[0]!).worst).toBeLessThan(1e-11);
  });
});

describe('the way up', () => {
  it('adds up flows, and the losses along a single run', () => {
    const run = (into: number) => ({
      into,
      diameter: 0.1 + 0.02 * into,
      roughness: 9e-5,
      frictional: 30,
      fixed: 0.5,
      join: { kind: 'momentum', angle: 0 } as const,
    });
    const network = buildNetwork([run(-1), run(0), run(1)], AIR, colebrook);
    const work = createWorkspace(network);
    work.flow[2] = 0.15;
    up(network, work);
    expect([...work.flow]).toEqual([0.15, 0.15, 0.15]);
    const losses = lossesAt(network, work.gate, work.flow).section.reduce((a, b) => a + b);
    // The table is the law to 2e-11.
    expect(Math.abs(work.suction[0]! / losses - 1)).toBeLessThan(1e-10);
  });

  it('stops at a section whose friction is not in the table yet, and goes on from there', () => {
    const random = seededRandom(3);
    const { sections } = randomTree(random, { leaves: 5, wyes: 'momentum' });
    const network = buildNetwork(sections, AIR, colebrook);
    const work = createWorkspace(network);
    for (let i = 0; i < network.count; i++) if (isEnd(network, i)) work.flow[i] = 0.1;
    const stops: number[] = [];
    for (let from = network.count - 1; from >= 0; ) {
      from = sweepUp(network, work, from);
      if (from < 0) break;
      stops.push(from);
      fillSpan(network.friction, from, network.reynolds[from]! * work.flow[from]!);
    }
    expect(stops).toEqual(stops.toSorted((a, b) => b - a));
    expect(stops).toHaveLength(network.count);
    expect(sweepUp(network, work, network.count - 1)).toBe(-1);
  });

  it.each(['momentum', 'fixed'] as const)(
    'leaves at a balance the slope that the suction at the flange has, %s wyes',
    (wyes) => {
      for (const seed of TREES) {
        const random = seededRandom(seed);
        const { sections } = randomTree(random, { leaves: 2 + (seed % 20), wyes });
        const network = buildNetwork(sections, AIR, colebrook);
        const work = createWorkspace(network);
        const gate = new Float64Array(network.count);
        const at = (flow: number) => {
          settleAtFlow(network, work, gate, flow);
          return work.suction[0]!;
        };
        const step = 1e-4;
        const difference = (at(0.2 * (1 + step)) - at(0.2 * (1 - step))) / (0.4 * step);
        at(0.2);
        // The central difference is off by the square of its step; the suction itself by 1e-9.
        expect(Math.abs(work.slope[0]! / difference - 1)).toBeLessThan(1e-4);
      }
    },
  );
});

describe('the way down', () => {
  it('keeps mass at every wye, unless a flow would turn round', () => {
    const random = seededRandom(11);
    const { sections } = randomTree(random, { leaves: 30, wyes: 'momentum' });
    const network = buildNetwork(sections, AIR, colebrook);
    const work = createWorkspace(network);
    settleAtFlow(network, work, new Float64Array(network.count), 0.3);
    sweepDown(network, work, 0.01);
    const { mass } = residualOf(network, lossesAt(network, work.gate, work.flow), work.flow, 1);
    expect(mass).toBeLessThan(1e-12);
  });

  it('takes a flow that would turn round to a tenth of itself', () => {
    const inlet = { into: 0, diameter: 0.1, roughness: 0, frictional: 0, fixed: 1 };
    const join = { kind: 'fixed', coefficient: 0, of: 'own' } as const;
    const root = { ...inlet, into: -1 };
    const sections = [root, inlet, { ...inlet, fixed: 1e8 }].map((one) => ({ ...one, join }));
    const network = buildNetwork(sections, AIR, colebrook);
    const work = createWorkspace(network);
    work.flow.set([0, 0.1, 0.1]);
    up(network, work);
    // The second inlet draws a ten-thousandth of the first: from equal flows it is to lose nearly all.
    const largest = sweepDown(network, work, -0.15);
    expect(work.flow[2]).toBeGreaterThan(0);
    expect(largest).toBeGreaterThan(1);
    expect(work.flow.every((flow) => flow > 0)).toBe(true);
  });

  it('tells the largest step as a part of its flow', () => {
    const pipe = { into: -1, diameter: 0.1, roughness: 0, frictional: 0, fixed: 1 };
    const join = { kind: 'momentum', angle: 0 } as const;
    const network = buildNetwork([{ ...pipe, join }], AIR, colebrook);
    const work = createWorkspace(network);
    work.flow[0] = 0.1;
    up(network, work);
    expect(sweepDown(network, work, 0.025)).toBeCloseTo(0.2, 12);
    expect(work.flow[0]).toBeCloseTo(0.125, 12);
  });
});
