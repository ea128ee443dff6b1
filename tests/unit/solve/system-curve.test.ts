import { describe, expect, it } from 'vitest';
import { valueAt } from '../../../src/math/hermite.ts';
import { colebrook } from '../../../src/duct/colebrook.ts';
import { balance } from '../../../src/solve/balance.ts';
import { buildNetwork } from '../../../src/solve/network.ts';
import { systemCurve } from '../../../src/solve/system-curve.ts';
import { createWorkspace } from '../../../src/solve/workspace.ts';
import {
  randomGates,
  randomTree,
  seededRandom,
  shopCurve,
  shopTree,
} from '../../setup/random-tree.ts';

const AIR = { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 };

const cases = Array.from({ length: 60 }, (_, i) => {
  const random = seededRandom(i + 1);
  const leaves = 2 + (i % 20);
  const wyes = i % 2 === 0 ? 'momentum' : 'fixed';
  const tree = i % 3 === 0 ? randomTree(random, { leaves, wyes }) : shopTree(random, leaves, wyes);
  const network = buildNetwork(tree.sections, AIR, colebrook);
  return { network, gates: randomGates(random, tree), curve: shopCurve(random, leaves) };
});

describe('the system curve', () => {
  it('passes through the operating point', () => {
    for (const { network, gates, curve } of cases) {
      const { point } = balance(network, createWorkspace(network), gates, curve);
      const [read] = systemCurve(network, gates, [point?.flow ?? Number.NaN]);
      expect(Math.abs(read!.suction / point!.suction - 1)).toBeLessThan(1e-6);
    }
  });

  it('is 0 at no flow and rises from there', () => {
    for (const { network, gates } of cases) {
      const flows = Array.from({ length: 80 }, (_, i) => (i / 79) ** 3);
      const points = systemCurve(network, gates, flows);
      expect(points.map(({ flow }) => flow)).toEqual(flows);
      expect(points[0]?.suction).toBe(0);
      points.forEach(({ suction, slope }, i) => {
        if (i > 0) expect(suction).toBeGreaterThan(points[i - 1]!.suction);
        expect(slope).toBeGreaterThan(0);
      });
    }
  });

  it('is drawn between its points by cubics that stay on it', () => {
    for (const { network, gates } of cases) {
      const flows = Array.from({ length: 41 }, (_, i) => i / 40);
      const points = systemCurve(network, gates, flows);
      const spline = {
        x: Float64Array.from(flows),
        y: Float64Array.from(points, ({ suction }) => suction),
        slope: Float64Array.from(points, ({ slope }) => slope),
      };
      const between = flows.slice(1).map((flow) => flow - 1 / 80);
      const most = points.at(-1)!.suction;
      for (const { flow, suction } of systemCurve(network, gates, between)) {
        // Where a branch passes from laminar to turbulent the curve has a bend of its own.
        expect(Math.abs(valueAt(spline, flow) - suction)).toBeLessThan(1e-4 * most);
      }
    }
  });

  it('does not mind the order of its flows', () => {
    const { network, gates } = cases[3]!;
    const flows = [0.5, 0.01, 0, 0.3, 1];
    const jumped = systemCurve(network, gates, flows).toSorted((a, b) => a.flow - b.flow);
    const walked = systemCurve(
      network,
      gates,
      flows.toSorted((a, b) => a - b),
    );
    jumped.forEach(({ suction }, i) => {
      expect(Math.abs(suction - walked[i]!.suction)).toBeLessThanOrEqual(1e-9 * suction);
    });
  });

  it('refuses a flow that is none', () => {
    const { network, gates } = cases[0]!;
    for (const flow of [-0.1, Number.NaN]) {
      expect(() => systemCurve(network, gates, [flow])).toThrow(RangeError);
      expect(() => systemCurve(network, gates, [flow])).toThrow(`not ${flow}`);
    }
  });
});
