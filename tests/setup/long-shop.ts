// A shop of as many drops as wanted, for benchmarks and for layouts with many drops: a trunk that
// narrows away from the collector, a drop of pipe and hose at each of its wyes.
import type { Drop } from '../../src/shop/schema/drop-schema.ts';
import type { Section } from '../../src/shop/schema/section-schema.ts';
import type { Shop } from '../../src/shop/schema/shop-schema.ts';
import { smallShop } from '../unit/shop/small-shop.ts';

/** Widest at the collector, narrowest at the far end of the trunk [m]. */
const TRUNK = { widest: 0.3, narrowest: 0.15 };

export function longShop(drops: number): Shop {
  const sections = Array.from({ length: drops }, (_, i) => trunkAndDrop(i, drops)).flat();
  return {
    ...smallShop,
    name: `${drops} drops along a trunk`,
    collector: {
      ...smallShop.collector,
      curve: {
        ...smallShop.collector.curve,
        points: [
          { flow: 0, pressure: 3400 },
          { flow: 0.4, pressure: 3200 },
          { flow: 0.8, pressure: 2500 },
          { flow: 1.4, pressure: 400 },
        ],
      },
    },
    sections,
    drops: Array.from({ length: drops }, (_, i) => dropAt(i)),
    gateSets: [],
  };
}

/** The last wye of the trunk would have one inlet, so the last drop's pipe is the trunk's end. */
function trunkAndDrop(i: number, drops: number): Section[] {
  const into = i === 0 ? 'collector' : `trunk-${i}`;
  const straight = i === 0 ? {} : { join: { kind: 'momentum', angle: 0 } as const };
  const pipe: Section = {
    id: `pipe-${i + 1}`,
    into: i === drops - 1 ? into : `trunk-${i + 1}`,
    pipe: { kind: 'custom', diameter: 0.125, roughness: 9e-5 },
    length: 2 + (i % 5),
    fittings: [{ kind: 'bend', angle: 90, radius: 1.5 }],
    ...(i === drops - 1 ? straight : { join: { kind: 'momentum', angle: 45 } as const }),
  };
  if (i === drops - 1) return [pipe];
  const part = i / Math.max(1, drops - 1);
  const diameter = TRUNK.widest + part * (TRUNK.narrowest - TRUNK.widest);
  return [
    {
      id: `trunk-${i + 1}`,
      into,
      pipe: { kind: 'custom', diameter: Math.round(1000 * diameter) / 1000, roughness: 9e-5 },
      length: 1.5,
      fittings: [],
      ...straight,
    },
    pipe,
  ];
}

function dropAt(i: number): Drop {
  return {
    id: `drop-${i + 1}`,
    name: `Machine ${i + 1}`,
    into: `pipe-${i + 1}`,
    hood: { kind: 'coefficient', coefficient: 0.65 },
    gate: { travel: 1 },
    need: 0.15,
  };
}
