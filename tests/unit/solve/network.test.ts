import { describe, expect, it } from 'vitest';
import { colebrook } from '../../../src/duct/colebrook.ts';
import { buildNetwork, type SectionInput } from '../../../src/solve/network.ts';
import { randomTree, seededRandom } from '../../setup/random-tree.ts';

const AIR = { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 };

const section = (into: number, given: Partial<SectionInput> = {}): SectionInput => ({
  into,
  diameter: 0.1,
  roughness: 9e-5,
  frictional: 40,
  fixed: 1,
  join: { kind: 'momentum', angle: 0 },
  ...given,
});

const build = (...sections: SectionInput[]) => buildNetwork(sections, AIR, colebrook);

describe('the order of a network', () => {
  const trees = Array.from({ length: 40 }, (_, seed) => {
    const random = seededRandom(seed + 1);
    const { sections } = randomTree(random, { leaves: 1 + (seed % 30), wyes: 'momentum' });
    // Sections come from a document in any order.
    const places = sections
      .map((_section, i) => ({ i, at: random() }))
      .toSorted((a, b) => a.at - b.at);
    const moved = places.map(({ i }) => sections[i]!);
    const into = moved.map((one) => places.findIndex(({ i }) => i === one.into));
    return moved.map((one, i) => ({ ...one, into: into[i]! }));
  });

  it('has the flange first and every section before its inlets', () => {
    for (const tree of trees) {
      const { parent } = buildNetwork(tree, AIR, colebrook);
      expect(parent[0]).toBe(-1);
      expect(parent.every((below, i) => below < i && (i === 0 || below >= 0))).toBe(true);
    }
  });

  it('keeps the inlets of a section together, each section once', () => {
    for (const tree of trees) {
      const { parent, firstInlet, endInlet, count, order } = buildNetwork(tree, AIR, colebrook);
      const met: number[] = [0];
      for (let i = 0; i < count; i++) {
        const inlets = parent.subarray(firstInlet[i], endInlet[i]);
        expect(inlets.every((below) => below === i)).toBe(true);
        met.push(...[...inlets.keys()].map((k) => firstInlet[i]! + k));
      }
      expect(met).toEqual(Array.from({ length: count }, (_, i) => i));
      expect(order.toSorted()).toEqual(Int32Array.from(met));
    }
  });

  it('leads each section where the input says', () => {
    for (const tree of trees) {
      const { parent, order, count } = buildNetwork(tree, AIR, colebrook);
      for (let i = 1; i < count; i++) expect(order[parent[i]!]).toBe(tree[order[i]!]!.into);
    }
  });
});

describe('the numbers of a section', () => {
  const { dynamic, reynolds, laminar, relativeRoughness } = build(section(-1));

  it('give velocity pressure and Reynolds number of 0.1 m³/s in 100 mm', () => {
    // 12.7324 m/s.
    expect(dynamic[0]! * 0.1 ** 2).toBeCloseTo(97.2683, 3);
    expect(reynolds[0]! * 0.1).toBeCloseTo(84_414, 0);
    expect(relativeRoughness[0]).toBeCloseTo(9e-4, 15);
  });

  it('give Hagen and Poiseuille’s loss where it is laminar: 128 μ L Q/(π d⁴)', () => {
    expect(laminar[0]).toBeCloseTo((128 * 1.81e-5 * 40 * 0.1) / (Math.PI * 0.1 ** 4), 9);
  });
});

describe('the wyes', () => {
  const branch = { kind: 'momentum', angle: Math.PI / 4 } as const;
  const factor = (coefficient: number) => ({ kind: 'fixed', coefficient, of: 'own' }) as const;

  it('act on each other only where momentum joins', () => {
    const coupled = build(section(-1), section(0), section(0, { join: branch }));
    expect([...coupled.isCoupled]).toEqual([1, 0, 0]);
    const plain = build(
      section(-1),
      section(0, { join: factor(0) }),
      section(0, { join: factor(0.28) }),
    );
    expect([...plain.isCoupled]).toEqual([0, 0, 0]);
    expect(plain.own[2]).toBeCloseTo(0.28 * plain.dynamic[2]!, 9);
    expect(plain.own[1]).toBe(0);
  });

  it('part what is lost on the combined flow into a common share and what an inlet has more', () => {
    const on = (coefficient: number) => ({ kind: 'fixed', coefficient, of: 'combined' }) as const;
    const { shared, excess, combined, isCoupled, isUneven, dynamic } = build(
      section(-1),
      section(0, { join: on(0.3) }),
      section(0, { join: on(0.1) }),
    );
    expect(shared[0]! / dynamic[0]!).toBeCloseTo(0.1, 12);
    expect(excess[1]! / dynamic[0]!).toBeCloseTo(0.2, 12);
    expect(excess[2]).toBe(0);
    expect(combined[1]! / dynamic[0]!).toBeCloseTo(0.3, 12);
    expect([...isCoupled]).toEqual([1, 0, 0]);
    expect([...isUneven]).toEqual([1, 0, 0]);
  });

  it('are none where one section empties into another', () => {
    const { own, combined, cross, isCoupled } = build(section(-1), section(0, { join: branch }));
    expect([...own, ...combined, ...cross, ...isCoupled]).toEqual(Array(8).fill(0));
  });

  it('have inlets of one kind', () => {
    expect(() => build(section(-1), section(0), section(0, { join: factor(0) }))).toThrow(
      'section 2 joins by fixed, its neighbour by momentum',
    );
  });
});

describe('what is no tree is refused', () => {
  it.each([
    ['nothing at all', [], '0 sections at the flange'],
    ['two sections at the flange', [section(-1), section(-1)], '2 sections at the flange'],
    ['none at the flange', [section(1), section(0)], '0 sections at the flange'],
    ['a section that empties into none', [section(-1), section(7)], 'section 1 empties into 7'],
    ['a place between two', [section(-1), section(0.5)], 'section 1 empties into 0.5'],
    ['a section that empties into itself', [section(-1), section(1)], 'section 1 never reaches'],
    ['a ring', [section(-1), section(2), section(3), section(1)], 'section 1 never reaches'],
  ])('%s', (_, sections, message) => {
    expect(() => build(...sections)).toThrow(RangeError);
    expect(() => build(...sections)).toThrow(message);
  });
});

describe('a number out of its range is refused with its place', () => {
  it.each([
    ['diameter', 0],
    ['diameter', Number.NaN],
    ['roughness', -1e-6],
    ['frictional', -1],
    ['fixed', Number.NaN],
  ])('%s %f', (name, value) => {
    const message = `section 1 has ${name} ${value}`;
    expect(() => build(section(-1), section(0, { [name]: value }))).toThrow(message);
  });
});
