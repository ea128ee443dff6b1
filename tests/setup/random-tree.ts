// Random duct trees for property tests, comparisons and benchmarks. Wild on purpose: diameters and
// lengths are drawn without regard to each other, so that the solver meets worse than any shop.

import type { CollectorCurve } from '../../src/curve/collector-curve.ts';
import { gateCoefficient } from '../../src/duct/blast-gate.ts';
import type { Join } from '../../src/duct/wye.ts';
import { pchip } from '../../src/math/pchip.ts';
import type { SectionInput } from '../../src/solve/network.ts';

export type Random = () => number;

/** A small seeded generator (mulberry32, public domain): the same numbers on every machine. */
export function seededRandom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export interface TreeOptions {
  readonly leaves: number;
  readonly wyes: 'momentum' | 'fixed';
  /** Inside diameters to choose from [m]; otherwise anything from 50 to 300 mm. */
  readonly sizes?: readonly number[];
}

export interface RandomTree {
  readonly sections: readonly SectionInput[];
  /** Places of the open ends among the sections. */
  readonly openEnds: readonly number[];
}

/** A tree with the given number of open ends; wyes of two inlets and now and then three. */
export function randomTree(random: Random, options: TreeOptions): RandomTree {
  const sections: SectionInput[] = [];
  const openEnds: number[] = [];
  const between = (low: number, high: number) => low + (high - low) * random();
  const skewed = (low: number, high: number) => low * (high / low) ** random();
  const diameter = () => {
    const { sizes } = options;
    return sizes ? (sizes[Math.floor(random() * sizes.length)] ?? 0.1) : skewed(0.05, 0.3);
  };
  const join = (place: number): Join => {
    if (options.wyes === 'momentum') {
      const angle = place === 0 && random() < 0.8 ? 0 : (between(15, 90) * Math.PI) / 180;
      return { kind: 'momentum', angle };
    }
    return { kind: 'fixed', coefficient: place === 0 ? 0 : between(0.1, 0.6), of: 'own' };
  };
  const add = (into: number, place: number, entry: number) => {
    const d = diameter();
    const bends = Math.floor(random() * 4);
    sections.push({
      into,
      diameter: d,
      roughness: skewed(1.5e-6, 2e-3),
      frictional: skewed(0.1, 40) / d + bends * between(5, 20),
      fixed: entry + bends * between(0.05, 0.4),
      join: join(place),
    });
    return sections.length - 1;
  };
  const grow = (into: number, place: number, leaves: number) => {
    if (leaves === 1) {
      const inner = random() < 0.3 ? add(into, place, 0) : into;
      openEnds.push(add(inner, inner === into ? place : 0, between(0.04, 3)));
      return;
    }
    const wye = add(into, place, 0);
    const parts = leaves > 2 && random() < 0.15 ? 3 : 2;
    let left = leaves;
    for (let part = parts; part > 1; part--) {
      const share = 1 + Math.floor(random() * (left - part + 1));
      grow(wye, parts - part, share);
      left -= share;
    }
    grow(wye, parts - 1, left);
  };
  grow(-1, 0, options.leaves);
  return { sections, openEnds };
}

/** A gate coefficient for each section of a tree: shut, part open or open at the open ends. */
export function randomGates(random: Random, tree: RandomTree): Float64Array {
  const gates = new Float64Array(tree.sections.length);
  for (const end of tree.openEnds) {
    const draw = random();
    const leak = 0.001 + 0.01 * random();
    const travel = draw < 0.5 ? 0 : draw < 0.75 ? random() : 1;
    gates[end] = gateCoefficient(travel, leak, 0.1);
  }
  return gates;
}

/** A collector with 3 to 9 points; `humped` ones rise at first. */
export function randomCurve(random: Random, shape: 'falling' | 'humped'): CollectorCurve {
  const count = 3 + Math.floor(random() * 7);
  const free = 0.05 * 40 ** random();
  const shutOff = 500 + 3500 * random();
  const hump = shape === 'humped' ? 0.1 + 0.5 * random() : 0;
  const dip = shape === 'humped' && random() < 0.5 ? 0.3 * random() : 0;
  const steepness = 1.2 + 1.5 * random();
  const x = Array.from({ length: count }, (_, i) => (free * i) / (count - 1));
  const y = x.map((flow) => {
    const part = flow / free;
    const bulge = hump * Math.sin(Math.PI * part) - dip * Math.sin(Math.PI * Math.min(1, 3 * part));
    return shutOff * Math.max(0.02, 1 - 0.9 * part ** steepness + bulge);
  });
  const filter = random() < 0.5 ? 0 : (shutOff / free) * 0.1 * random();
  return {
    spline: pchip(x, y),
    flowScale: 0.8 + 0.4 * random(),
    pressureScale: 0.8 + 0.4 * random(),
    quadratic: random() < 0.5 ? 0 : (shutOff / free ** 2) * 0.1 * random(),
    linear: filter,
  };
}

/** Usual drop sizes [m] and how the pipe grows: area below a wye over the sum of its drops' areas. */
const DROP_SIZES = [0.1, 0.125, 0.15];
const SHARE_OPEN = 0.4;

/** A tree as ducts are built: the pipe grows toward the collector, most of the lengths are short. */
export function shopTree(random: Random, leaves: number, wyes: 'momentum' | 'fixed'): RandomTree {
  const tree = randomTree(random, { leaves, wyes });
  const area = tree.sections.map(() => 0);
  for (const end of tree.openEnds) {
    const size = DROP_SIZES[Math.floor(random() * DROP_SIZES.length)] ?? 0.1;
    for (let i = end; i >= 0; i = tree.sections[i]!.into) area[i]! += size ** 2;
  }
  const sections = tree.sections.map((section, i) => {
    const isDrop = tree.openEnds.includes(i);
    const diameter = isDrop ? Math.sqrt(area[i]!) : Math.max(0.1, Math.sqrt(area[i]! * SHARE_OPEN));
    const length = 0.5 + 5 * random();
    return { ...section, diameter, roughness: 9e-5, frictional: length / diameter + 15 };
  });
  return { sections, openEnds: tree.openEnds };
}

/** A falling curve that carries a share of the drops of a {@link shopTree} at about 20 m/s. */
export function shopCurve(random: Random, leaves: number): CollectorCurve {
  const free = leaves * 0.2 * (0.6 + 0.4 * random());
  const x = [0, 0.2, 0.4, 0.6, 0.8, 1].map((part) => part * free);
  const y = [2600, 2550, 2400, 2050, 1400, 300].map(
    (pressure) => pressure * (0.9 + 0.2 * random()),
  );
  const falling = y.toSorted((a, b) => b - a);
  return { spline: pchip(x, falling), flowScale: 1, pressureScale: 1, quadratic: 0, linear: 0 };
}
