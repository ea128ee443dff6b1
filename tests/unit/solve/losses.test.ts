import { describe, expect, it } from 'vitest';
import { elementLoss } from '../../../src/duct/coefficient.ts';
import { colebrook } from '../../../src/duct/colebrook.ts';
import { momentumWyeK } from '../../../src/duct/wye.ts';
import { CLOSING } from '../../../src/solve/balance.ts';
import { type Losses, lossesAt, residualOf } from '../../../src/solve/losses.ts';
import { buildNetwork, type SectionInput } from '../../../src/solve/network.ts';
import { settleAtFlow } from '../../../src/solve/settle.ts';
import { createWorkspace } from '../../../src/solve/workspace.ts';
import { randomGates, randomTree, seededRandom } from '../../setup/random-tree.ts';

const AIR = { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 };

const section = (into: number, diameter: number, join: SectionInput['join']): SectionInput => ({
  into,
  diameter,
  roughness: 9e-5,
  frictional: 40,
  fixed: 1,
  join,
});
const area = (diameter: number) => (Math.PI / 4) * diameter ** 2;

const run = { kind: 'momentum', angle: 0 } as const;
const branch = { kind: 'momentum', angle: Math.PI / 4 } as const;
const own = { kind: 'fixed', coefficient: 0.28, of: 'own' } as const;
const combined = { kind: 'fixed', coefficient: 0.28, of: 'combined' } as const;

const build = (...sections: SectionInput[]) => buildNetwork(sections, AIR, colebrook);

describe('lossesAt', () => {
  const flow = Float64Array.of(0.3, 0.2, 0.1);
  const gate = Float64Array.of(0, 0, 3);

  it('takes friction, fittings and gate of a section together', () => {
    const { section: found } = lossesAt(
      build(section(-1, 0.15, run), section(0, 0.15, run), section(0, 0.1, branch)),
      gate,
      flow,
    );
    [0.15, 0.15, 0.1].forEach((diameter, i) => {
      const coefficient = { fixed: 1 + gate[i]!, frictional: 40 };
      const element = elementLoss(coefficient, diameter, 9e-5, AIR, colebrook);
      expect(found[i]).toBeCloseTo(element(flow[i]!).loss, 9);
    });
  });

  it('takes a momentum wye as its coefficients say, on the combined velocity pressure', () => {
    const { join } = lossesAt(
      build(section(-1, 0.15, run), section(0, 0.15, run), section(0, 0.1, branch)),
      gate,
      flow,
    );
    const pressure = 0.6 * (0.3 / area(0.15)) ** 2;
    const k = momentumWyeK(
      [
        { flow: 0.2, area: area(0.15), angle: 0 },
        { flow: 0.1, area: area(0.1), angle: Math.PI / 4 },
      ],
      area(0.15),
    );
    expect(join[0]).toBe(0);
    expect(join[1]).toBeCloseTo(k[0]! * pressure, 9);
    expect(join[2]).toBeCloseTo(k[1]! * pressure, 9);
  });

  it('takes a fixed coefficient on the stream that it is for', () => {
    const wye = (join: SectionInput['join']) =>
      lossesAt(
        build(section(-1, 0.15, run), section(0, 0.15, own), section(0, 0.1, join)),
        gate,
        flow,
      ).join[2];
    expect(wye(own)).toBeCloseTo(0.28 * 0.6 * (0.1 / area(0.1)) ** 2, 9);
    expect(wye(combined)).toBeCloseTo(0.28 * 0.6 * (0.3 / area(0.15)) ** 2, 9);
  });

  it('loses nothing where nothing flows', () => {
    const network = build(section(-1, 0.15, run), section(0, 0.15, run), section(0, 0.1, branch));
    const found = lossesAt(network, gate, new Float64Array(3));
    expect([...found.section, ...found.join]).toEqual([0, 0, 0, 0, 0, 0]);
  });
});

describe('residualOf', () => {
  const random = seededRandom(7);
  const tree = randomTree(random, { leaves: 12, wyes: 'momentum' });
  const network = buildNetwork(tree.sections, AIR, colebrook);
  const gates = randomGates(random, tree);
  const gate = Float64Array.from(network.order, (input) => gates[input]!);
  const work = createWorkspace(network);
  settleAtFlow(network, work, gate, 0.3);
  const suction = work.suction[0]!;
  const residual = (flow: Float64Array) =>
    residualOf(network, lossesAt(network, gate, flow), flow, suction);
  const ends = [...work.flow.keys()].filter((i) => network.firstInlet[i] === network.endInlet[i]);

  it('is next to nothing at a balance', () => {
    const { worst, mass, pressure } = residual(work.flow);
    expect(worst).toBeLessThan(CLOSING);
    expect(worst).toBe(Math.max(mass, pressure));
  });

  it('sees any one flow that is spoiled by a hundred-thousandth, and where', () => {
    for (const spoiled of work.flow.keys()) {
      const flow = work.flow.map((value, i) => (i === spoiled ? value * (1 + 1e-5) : value));
      const { worst, section: place } = residual(flow);
      expect(worst).toBeGreaterThan(CLOSING);
      const below = network.parent[spoiled]!;
      const isNear = (i: number): boolean =>
        i === spoiled || i === below || (i >= 0 && isNear(network.parent[i]!));
      expect(isNear(place)).toBe(true);
    }
  });

  it('counts mass as a part of the flow, at the section it is missing from', () => {
    const flow = Float64Array.from(work.flow);
    flow[0]! *= 1.01;
    const { mass } = residual(flow);
    expect(mass).toBeCloseTo(0.01 / 1.01, 6);
  });

  it('counts pressure as a part of the suction, along each path', () => {
    const losses = lossesAt(network, gate, work.flow);
    const found = residualOf(network, losses, work.flow, suction * 1.25);
    expect(found.pressure).toBeCloseTo(0.2, 6);
    expect(ends).toContain(found.section);
  });

  it('sees a loss that is no number', () => {
    for (const broken of work.flow.keys()) {
      const losses: Losses = lossesAt(network, gate, work.flow);
      losses.section[broken] = Number.NaN;
      expect(residualOf(network, losses, work.flow, suction).worst).toBe(Number.POSITIVE_INFINITY);
    }
  });
});
