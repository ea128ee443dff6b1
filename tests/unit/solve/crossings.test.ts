import { describe, expect, it } from 'vitest';
import { availableSuction, type CollectorCurve } from '../../../src/curve/collector-curve.ts';
import { colebrook } from '../../../src/duct/colebrook.ts';
import { pchip } from '../../../src/math/pchip.ts';
import { allCrossings, isOnlyCrossing } from '../../../src/solve/crossings.ts';
import { buildNetwork, type Network } from '../../../src/solve/network.ts';
import { settleAtFlow } from '../../../src/solve/settle.ts';
import { createWorkspace, type Workspace } from '../../../src/solve/workspace.ts';
import { randomGates, randomTree, seededRandom } from '../../setup/random-tree.ts';
import { windingCurve } from '../../setup/winding-curve.ts';

const AIR = { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 };
const CASES = 400;
const SCAN = 4000;

interface Ducts {
  readonly network: Network;
  readonly work: Workspace;
  readonly gate: Float64Array;
  suctionAt(flow: number): number;
}

function randomDucts(seed: number): Ducts & { readonly curve: CollectorCurve } {
  const random = seededRandom(seed);
  const wyes = seed % 2 === 0 ? 'momentum' : 'fixed';
  const tree = randomTree(random, { leaves: 2 + Math.floor(4 * random()), wyes });
  const network = buildNetwork(tree.sections, AIR, colebrook);
  const work = createWorkspace(network);
  const gates = randomGates(random, tree);
  const gate = Float64Array.from(network.order, (input) => gates[input]!);
  const suctionAt = (flow: number) => {
    const sweeps = settleAtFlow(network, work, gate, Math.max(flow, 1e-9));
    if (sweeps < 0) throw new Error(`tree ${seed} did not settle at ${flow} m³/s`);
    return flow === 0 ? 0 : work.suction[0]!;
  };
  const reach = 0.02 * 30 ** random();
  return { network, work, gate, suctionAt, curve: windingCurve(random, suctionAt, reach) };
}

/** Neighbours in a plain scan of many flows between which the collector changes sides. */
function scan(ducts: Ducts, curve: CollectorCurve): { low: number; high: number }[] {
  const { x } = curve.spline;
  const end = 1.5 * x[x.length - 1]! * curve.flowScale;
  const found: { low: number; high: number }[] = [];
  let low = 0;
  let isAbove = true;
  for (let i = 1; i <= SCAN; i++) {
    const high = (end * i) / SCAN;
    const above = availableSuction(curve, high) > ducts.suctionAt(high);
    if (above !== isAbove) found.push({ low, high });
    low = high;
    isAbove = above;
  }
  return found;
}

describe('allCrossings', () => {
  const cases = Array.from({ length: CASES }, (_, i) => {
    const ducts = randomDucts(i + 1);
    const found = allCrossings(ducts.network, ducts.work, ducts.gate, ducts.curve);
    return { seed: i + 1, ducts, found };
  });

  it(`finds every crossing that a scan of ${SCAN} flows sees`, () => {
    const missed = cases.flatMap(({ seed, ducts, found }) =>
      scan(ducts, ducts.curve)
        .filter(({ low, high }) => !found.some(({ flow }) => flow >= low && flow <= high))
        .map(({ low }) => `${seed}: near ${low}`),
    );
    expect(missed).toEqual([]);
  });

  it('finds nothing that is none', () => {
    for (const { ducts, found } of cases) {
      for (const { flow, suction } of found) {
        // The root is exact to rounding, the ducts settle to 1e-9 or better.
        expect(Math.abs(ducts.suctionAt(flow) / suction - 1)).toBeLessThan(1e-8);
      }
    }
  });

  it('calls them stable and unstable in turn, the first and the last one stable', () => {
    for (const { found } of cases) {
      found.forEach(({ stable }, i) => expect(stable).toBe(i % 2 === 0));
      expect(found.length % 2).toBe(1);
    }
  });

  it('had many of every kind to find', () => {
    const withCount = (count: number) => cases.filter(({ found }) => found.length === count).length;
    expect(withCount(1)).toBeGreaterThan(20);
    expect(withCount(3)).toBeGreaterThan(20);
    expect(withCount(5)).toBeGreaterThan(20);
  });

  it('keeps isOnlyCrossing from ever speaking where there are several', () => {
    for (const { ducts, found } of cases) {
      if (found.length < 2) continue;
      for (const { flow } of found) expect(isOnlyCrossing(ducts.curve, flow)).toBe(false);
    }
  });
});

describe('on one pipe', () => {
  const pipe = {
    into: -1,
    diameter: 0.15,
    roughness: 9e-5,
    frictional: 60,
    fixed: 2,
    join: { kind: 'momentum', angle: 0 },
  } as const;
  const network = buildNetwork([pipe], AIR, colebrook);
  const work = createWorkspace(network);
  const gate = new Float64Array(1);
  const curveThrough = (flows: number[], pressures: number[]): CollectorCurve => ({
    spline: pchip(flows, pressures),
    flowScale: 1,
    pressureScale: 1,
    quadratic: 0,
    linear: 0,
  });
  const found = (curve: CollectorCurve) => allCrossings(network, work, gate, curve);

  it('goes on along the end slope where the curve ends before the crossing', () => {
    const [crossing, ...others] = found(curveThrough([0.01, 0.05], [2000, 1990]));
    expect(crossing?.flow).toBeGreaterThan(0.2);
    expect(crossing?.stable).toBe(true);
    expect(others).toEqual([]);
  });

  it('finds both crossings of a curve that still rises, too steeply, at its last point', () => {
    const crossings = found(curveThrough([0, 0.02, 0.04], [1, 1.2, 40]));
    expect(crossings.map(({ stable }) => stable)).toEqual([true, false, true]);
    expect(crossings[2]?.flow).toBeGreaterThan(0.04);
  });

  it('finds none where the collector gives no suction', () => {
    expect(found(curveThrough([0, 0.1], [0, -200]))).toEqual([]);
    expect(found(curveThrough([0, 0.1], [-100, -200]))).toEqual([]);
  });

  it('calls a crossing unstable where suction is had only from some flow on', () => {
    const crossings = found(curveThrough([0, 0.02, 0.1, 0.2], [-50, 300, 300, 0]));
    expect(crossings.map(({ stable }) => stable)).toEqual([false, true]);
  });

  it('needs a look at the rest of the curve before one crossing is the only one', () => {
    const falling = curveThrough([0, 0.1, 0.2], [2000, 1500, 300]);
    const humped = curveThrough([0, 0.1, 0.2], [1400, 1500, 300]);
    const rising = curveThrough([0, 0.1, 0.2], [1000, 1400, 1500]);
    expect(isOnlyCrossing(falling, 0.12)).toBe(true);
    expect(isOnlyCrossing(humped, 0.105)).toBe(false);
    // Further right it gives less than at no flow: nothing to the left can need so much.
    expect(isOnlyCrossing(humped, 0.15)).toBe(true);
    expect(isOnlyCrossing(rising, 0.3)).toBe(false);
    expect(isOnlyCrossing({ ...falling, linear: -100 }, 0.12)).toBe(false);
  });
});
