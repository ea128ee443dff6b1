// Random shop documents in order, as shops are built: steel pipe of the catalogue that grows toward
// the collector, wyes of two or three inlets, a need at most drops, and a few gate sets.

import { PIPE_FAMILIES } from '../../src/duct/catalogue.ts';
import type { Drop } from '../../src/shop/schema/drop-schema.ts';
import type { Section, SectionJoin } from '../../src/shop/schema/section-schema.ts';
import type { GateSet, Shop } from '../../src/shop/schema/shop-schema.ts';
import { smallShop } from '../unit/shop/small-shop.ts';
import { type Random, type RandomTree, shopTree } from './random-tree.ts';

export interface ShopOptions {
  readonly drops: number;
  readonly wyes: 'momentum' | 'fixed';
  readonly curve: 'falling' | 'humped';
  readonly gateSets?: number;
}

/** A random shop; the same numbers for the same generator. */
export function randomShop(random: Random, options: ShopOptions): Shop {
  const { drops: count, wyes, gateSets = 2 } = options;
  const tree = shopTree(random, count, wyes);
  return {
    ...smallShop,
    name: `${count} random drops`,
    collector: {
      curve: {
        ...smallShop.collector.curve,
        points: curvePoints(random, count, options.curve),
        power: [
          { flow: 0, power: 300 * count },
          { flow: 0.2 * count, power: 500 * count },
        ],
        nameplate: 450 * count,
      },
      filter: { kind: 'measured', flow: 0.1 * count, pressure: 150 * random(), blinding: 1.5 },
      separator: { kind: 'none' },
    },
    sections: tree.sections.map((_, i) => sectionAt(random, tree, i)),
    drops: tree.openEnds.map((end, k) => dropAt(random, end, k)),
    gateSets: Array.from({ length: gateSets }, (_, k) => gateSetAt(random, count, k)),
  };
}

function curvePoints(random: Random, drops: number, shape: 'falling' | 'humped') {
  const free = drops * 0.2 * (0.6 + 0.4 * random());
  const heights =
    shape === 'falling' ? [2600, 2550, 2400, 2050, 1400, 300] : [1900, 1500, 2300, 2200, 1400, 300];
  const stretch = 0.9 + 0.2 * random();
  return heights.map((pressure, i) => ({
    flow: (free * i) / (heights.length - 1),
    pressure: pressure * stretch,
  }));
}

function sectionAt(random: Random, tree: RandomTree, i: number): Section {
  const { into, diameter, join } = tree.sections[i]!;
  const siblings = tree.sections.filter((section) => section.into === into);
  const document: SectionJoin =
    join.kind === 'momentum'
      ? { kind: 'momentum', angle: (join.angle * 180) / Math.PI }
      : { kind: 'fixed', coefficient: join.coefficient, of: join.of };
  const bends = Math.floor(random() * 3);
  return {
    id: `section-${i + 1}`,
    into: into < 0 ? 'collector' : `section-${into + 1}`,
    pipe: { kind: 'catalogue', family: 'galvanised-spiral', size: nearestSize(diameter) },
    length: 0.5 + 5 * random(),
    fittings: bends === 0 ? [] : [{ kind: 'bend', angle: 90, radius: 1.5, count: bends }],
    ...(siblings.length > 1 ? { join: document } : {}),
  };
}

function dropAt(random: Random, end: number, k: number): Drop {
  const drop = {
    id: `drop-${k + 1}`,
    name: `Machine ${k + 1}`,
    into: `section-${end + 1}`,
    hood: { kind: 'coefficient', coefficient: 0.3 + 1.5 * random() },
    gate: { travel: 1 },
  } as const;
  return random() < 0.7 ? { ...drop, need: 0.08 + 0.2 * random() } : drop;
}

function gateSetAt(random: Random, drops: number, k: number): GateSet {
  const open = Array.from({ length: drops }, (_, i) => `drop-${i + 1}`).filter(
    () => random() < 2 / drops,
  );
  return { id: `set-${k + 1}`, name: `Set ${k + 1}`, open: open.length > 0 ? open : ['drop-1'] };
}

/** The size of galvanised spiral pipe that is nearest to a diameter [m]. */
export function nearestSize(diameter: number): string {
  const sizes = PIPE_FAMILIES.find(({ id }) => id === 'galvanised-spiral')!.sizes;
  return sizes.toSorted(
    (a, b) => Math.abs(a.diameter - diameter) - Math.abs(b.diameter - diameter),
  )[0]!.id;
}
