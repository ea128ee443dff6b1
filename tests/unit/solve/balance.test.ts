import { describe, expect, it } from 'vitest';
import { availableSuction, type CollectorCurve } from '../../../src/curve/collector-curve.ts';
import { colebrook } from '../../../src/duct/colebrook.ts';
import type { FrictionLaw } from '../../../src/duct/friction-law.ts';
import { pchip } from '../../../src/math/pchip.ts';
import { balance, CLOSING } from '../../../src/solve/balance.ts';
import { buildNetwork, type SectionInput } from '../../../src/solve/network.ts';
import { createWorkspace } from '../../../src/solve/workspace.ts';
import { randomGates, randomTree, seededRandom, shopCurve } from '../../setup/random-tree.ts';

const AIR = { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 };

const pipe: SectionInput = {
  into: -1,
  diameter: 0.15,
  roughness: 9e-5,
  frictional: 60,
  fixed: 2,
  join: { kind: 'momentum', angle: 0 },
};

const curveOf = (...points: [flow: number, pressure: number][]): CollectorCurve => ({
  spline: pchip(
    points.map(([flow]) => flow),
    points.map(([, pressure]) => pressure),
  ),
  flowScale: 1,
  pressureScale: 1,
  quadratic: 0,
  linear: 0,
});

/** One pipe of 150 mm unless told otherwise; it needs about 6,000 Pa·s²/m⁶ of flow squared. */
function balanced(curve: CollectorCurve, sections: SectionInput[] = [pipe], law = colebrook) {
  const network = buildNetwork(sections, AIR, law);
  return balance(network, createWorkspace(network), new Float64Array(network.count), curve);
}

describe('a balance', () => {
  it('is where the collector gives what the ducts lose', () => {
    const curve = curveOf([0, 2400], [0.2, 2300], [0.4, 1800], [0.6, 700]);
    const { point, losses, flow, difficulties, crossings, residual } = balanced(curve);
    expect(difficulties).toEqual([]);
    expect(crossings).toEqual([point]);
    expect(point?.stable).toBe(true);
    expect(point?.suction).toBe(availableSuction(curve, point?.flow ?? Number.NaN));
    expect(Math.abs(losses.section[0]! / point!.suction - 1)).toBeLessThan(CLOSING);
    expect(flow[0]).toBeCloseTo(point!.flow, 12);
    expect(residual.worst).toBeLessThan(CLOSING);
  });

  it('comes in the order of the input, whatever that is', () => {
    const random = seededRandom(4);
    const tree = randomTree(random, { leaves: 10, wyes: 'momentum' });
    const gates = randomGates(random, tree);
    const curve = shopCurve(random, 10);
    const last = tree.sections.length - 1;
    const reversed = tree.sections.toReversed().map((section) => ({
      ...section,
      into: section.into < 0 ? -1 : last - section.into,
    }));
    const network = buildNetwork(tree.sections, AIR, colebrook);
    const there = balance(network, createWorkspace(network), gates, curve);
    const mirrored = buildNetwork(reversed, AIR, colebrook);
    const back = balance(mirrored, createWorkspace(mirrored), gates.toReversed(), curve);
    const whole = there.point!.flow;
    there.flow.forEach((flow, i) => {
      // Inlets are summed in the other order, and each ends where its last step was small enough.
      expect(Math.abs(flow - back.flow[last - i]!)).toBeLessThan(1e-9 * whole);
      const difference = there.losses.join[i]! - back.losses.join[last - i]!;
      expect(Math.abs(difference)).toBeLessThan(1e-8 * there.point!.suction);
    });
  });
});

it('stands a branch that loses nothing but in its wye', () => {
  const sections = [pipe, { ...pipe, into: 0, frictional: 0, fixed: 0 }, { ...pipe, into: 0 }];
  const curve = curveOf([0, 2400], [0.2, 2300], [0.4, 1800], [0.6, 700]);
  const { difficulties, flow, losses } = balanced(curve, sections);
  expect(difficulties).toEqual([]);
  expect(losses.section[1]).toBe(0);
  expect(flow[1]).toBeGreaterThan(flow[2]!);
  expect(flow[2]).toBeGreaterThan(0);
});

describe('what a balance says', () => {
  const kinds = (...given: Parameters<typeof balanced>) => balanced(...given).difficulties;

  it('curve ends above: the ducts draw more than the last point', () => {
    expect(kinds(curveOf([0, 2400], [0.2, 2300]))).toEqual([{ kind: 'curve ends', side: 'above' }]);
  });

  it('curve ends below: they draw less than the first', () => {
    const found = kinds(curveOf([0.6, 1200], [0.8, 300]));
    expect(found).toEqual([{ kind: 'curve ends', side: 'below' }]);
  });

  it('left of the peak: the fan may stall there', () => {
    const found = kinds(curveOf([0, 1500], [0.6, 2000], [0.7, 500]));
    expect(found).toEqual([{ kind: 'left of the peak' }]);
  });

  it('several crossings, and settles for the stable one with the most flow', () => {
    // Below, twice above and below the 60, 240, 540 and 950 Pa that the pipe needs at these flows.
    const found = balanced(curveOf([0, 30], [0.1, 40], [0.2, 700], [0.3, 800], [0.4, 100]));
    expect(found.difficulties[0]).toEqual({ kind: 'several crossings' });
    expect(found.crossings.map(({ stable }) => stable)).toEqual([true, false, true]);
    expect(found.point).toBe(found.crossings[2]);
    expect(found.residual.worst).toBeLessThan(CLOSING);
    expect(found.flow[0]).toBeCloseTo(found.crossings[2]!.flow, 12);
  });

  it('no suction: nothing moves and nothing is lost', () => {
    const found = balanced(curveOf([0, -10], [0.1, -200]));
    expect(found.difficulties).toEqual([{ kind: 'no suction' }]);
    expect(found.point).toBeUndefined();
    expect(found.crossings).toEqual([]);
    expect([...found.flow, ...found.losses.section, ...found.losses.join]).toEqual([0, 0, 0]);
  });

  const curve = curveOf([0, 2400], [0.2, 2300], [0.4, 1800], [0.6, 700]);

  it('did not balance, at a branch that its wye leaves nothing to draw with', () => {
    // A fixed loss on the combined stream that is more than the open run beside it can overcome.
    const join = (coefficient: number) => ({ kind: 'fixed', coefficient, of: 'combined' }) as const;
    const sections = [
      { ...pipe, diameter: 0.1, fixed: 0 },
      { ...pipe, into: 0, diameter: 0.2, fixed: 0.5, join: join(0) },
      { ...pipe, into: 0, diameter: 0.1, fixed: 1, join: join(1.5) },
    ];
    const found = balanced(curve, sections);
    expect(found.difficulties).toEqual([{ kind: 'did not balance', section: 2 }]);
    expect(found.point).toBeUndefined();
    expect([...found.flow]).toEqual([0, 0, 0]);
    // The next state of the same ducts is none the worse for it.
    const network = buildNetwork(sections, AIR, colebrook);
    const work = createWorkspace(network);
    const narrow = Float64Array.of(0, 30, 0);
    const cold = balance(network, createWorkspace(network), narrow, curve);
    balance(network, work, new Float64Array(3), curve);
    const after = balance(network, work, narrow, curve);
    expect(after.difficulties).toEqual([]);
    expect(after.point?.flow).toBeCloseTo(cold.point!.flow, 9);
  });

  it('did not balance, where the flows found do not close by the law itself', () => {
    // Finer than the table can follow: what was found with the table is seen to be wrong.
    const ripple: FrictionLaw = {
      name: 'a ripple on Colebrook–White',
      factor: (reynolds, roughness) =>
        colebrook.factor(reynolds, roughness) * (1 + 1e-3 * Math.sin(reynolds)),
      slope: (reynolds, roughness) => colebrook.slope(reynolds, roughness),
    };
    const found = balanced(curve, [pipe], ripple);
    expect(found.difficulties).toEqual([{ kind: 'did not balance', section: 0 }]);
    expect(found.residual.worst).toBeGreaterThan(CLOSING);
    expect(found.point).toBeDefined();
  });

  it('did not balance, where the law of friction gives no number', () => {
    const none: FrictionLaw = { name: 'none', factor: () => Number.NaN, slope: () => Number.NaN };
    const found = balanced(curve, [pipe], none);
    expect(found.difficulties).toEqual([{ kind: 'did not balance', section: 0 }]);
    expect(found.flow[0]).toBe(0);
  });
});
