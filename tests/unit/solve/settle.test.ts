import { describe, expect, it } from 'vitest';
import { availableSuction, type CollectorCurve } from '../../../src/curve/collector-curve.ts';
import { colebrook } from '../../../src/duct/colebrook.ts';
import { pchip } from '../../../src/math/pchip.ts';
import { CLOSING } from '../../../src/solve/balance.ts';
import { lossesAt, residualOf } from '../../../src/solve/losses.ts';
import { buildNetwork, type Network } from '../../../src/solve/network.ts';
import { settle, settleAtFlow } from '../../../src/solve/settle.ts';
import { createWorkspace, type Workspace } from '../../../src/solve/workspace.ts';
import { randomCurve, randomGates, randomTree, seededRandom } from '../../setup/random-tree.ts';

const AIR = { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 };

function drawn(seed: number) {
  const random = seededRandom(seed);
  const wyes = seed % 2 === 0 ? 'momentum' : 'fixed';
  const tree = randomTree(random, { leaves: 2 + (seed % 30), wyes });
  const network = buildNetwork(tree.sections, AIR, colebrook);
  const gates = () => {
    const drawnGates = randomGates(random, tree);
    return Float64Array.from(network.order, (input) => drawnGates[input]!);
  };
  return { network, gates, curve: randomCurve(random, 'falling') };
}

const worstAt = (network: Network, work: Workspace, suction: number) =>
  residualOf(network, lossesAt(network, work.gate, work.flow), work.flow, suction).worst;

const seeds = Array.from({ length: 80 }, (_, i) => i + 1);

describe('settle', () => {
  it('closes from nothing and from any earlier state of the gates', () => {
    for (const seed of seeds) {
      const { network, gates, curve } = drawn(seed);
      const work = createWorkspace(network);
      for (let state = 0; state < 3; state++) {
        expect(settle(network, work, gates(), curve)).toBeGreaterThan(0);
        const suction = availableSuction(curve, work.flow[0]!);
        expect(worstAt(network, work, suction)).toBeLessThan(CLOSING);
      }
    }
  });

  it('comes to the same flows from everywhere', () => {
    for (const seed of seeds) {
      const { network, gates, curve } = drawn(seed);
      const [first, second] = [gates(), gates()];
      const cold = createWorkspace(network);
      const warm = createWorkspace(network);
      settle(network, cold, second, curve);
      settle(network, warm, first, curve);
      settle(network, warm, second, curve);
      warm.flow.forEach((flow, i) => {
        // Both close to 1e-9 in pressure; a branch that loses next to nothing makes more of it.
        expect(Math.abs(flow - cold.flow[i]!)).toBeLessThan(1e-8 * cold.flow[0]!);
      });
    }
  });

  it('needs few sweeps, and a single one where nothing has changed', () => {
    let sweeps = 0;
    for (const seed of seeds) {
      const { network, gates, curve } = drawn(seed);
      const work = createWorkspace(network);
      const gate = gates();
      settle(network, work, gate, curve);
      expect(settle(network, work, gate, curve)).toBe(1);
      sweeps += settle(network, work, gates(), curve);
    }
    expect(sweeps / seeds.length).toBeLessThan(7);
  });

  it('starts afresh from a workspace that was emptied', () => {
    const { network, gates, curve } = drawn(5);
    const work = createWorkspace(network);
    const gate = gates();
    settle(network, work, gate, curve);
    const flow = work.flow[0]!;
    work.flow.fill(0);
    expect(settle(network, work, gate, curve)).toBeGreaterThan(1);
    expect(work.flow[0]).toBeCloseTo(flow, 9);
  });

  it('says so where there is nothing to settle at, and leaves flows that add up', () => {
    const { network, gates } = drawn(6);
    const none: CollectorCurve = {
      spline: pchip([0, 0.1], [-500, -900]),
      flowScale: 1,
      pressureScale: 1,
      quadratic: 0,
      linear: 0,
    };
    const work = createWorkspace(network);
    expect(settle(network, work, gates(), none)).toBe(-1);
    const { mass } = residualOf(network, lossesAt(network, work.gate, work.flow), work.flow, 1);
    expect(mass).toBeLessThan(1e-12);
  });
});

describe('settleAtFlow', () => {
  it('closes at the flow that is asked for, small or large', () => {
    for (const seed of seeds) {
      const { network, gates } = drawn(seed);
      const work = createWorkspace(network);
      const gate = gates();
      for (const flow of [0.3, 1e-6, 2, 0.01, 0.0101]) {
        expect(settleAtFlow(network, work, gate, flow)).toBeGreaterThan(0);
        expect(Math.abs(work.flow[0]! / flow - 1)).toBeLessThan(1e-11);
        expect(worstAt(network, work, work.suction[0]!)).toBeLessThan(CLOSING);
      }
    }
  });

  it('needs more suction for more flow', () => {
    const flows = Array.from({ length: 40 }, (_, i) => 1e-7 * 1.5 ** i);
    for (const seed of seeds) {
      const { network, gates } = drawn(seed);
      const work = createWorkspace(network);
      const gate = gates();
      const suctions = flows.map((flow) => {
        settleAtFlow(network, work, gate, flow);
        return work.suction[0]!;
      });
      expect(suctions.every((suction, i) => suction > (suctions[i - 1] ?? 0))).toBe(true);
    }
  });
});
