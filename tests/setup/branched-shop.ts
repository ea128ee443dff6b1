// A large shop for layouts: a main from which lines of drops branch off, as in a school or a factory.
// Every line has a trunk of its own that narrows away from the main.
import type { Drop } from '../../src/shop/schema/drop-schema.ts';
import type { Section } from '../../src/shop/schema/section-schema.ts';
import type { Shop } from '../../src/shop/schema/shop-schema.ts';
import { longShop } from './long-shop.ts';

const MACHINES = [
  'Table saw',
  'Planer',
  'Jointer',
  'Lathe',
  'Band saw',
  'Router',
  'Sander',
  'Sweep',
];
const straight = { kind: 'momentum', angle: 0 } as const;
const slanting = { kind: 'momentum', angle: 45 } as const;

/** `lines` lines of `each` drops, two lines at least and two drops in each. */
export function branchedShop(lines: number, each: number): Shop {
  const places = Array.from({ length: lines }, (_, line) => line);
  return {
    ...longShop(2),
    name: `${lines} lines of ${each} drops`,
    sections: places.flatMap((line) => [...mainAt(line, lines), ...lineAt(line, lines, each)]),
    drops: places.flatMap((line) => dropsAt(line, each)),
  };
}

function pipe(id: string, into: string, diameter: number, length: number): Section {
  return { id, into, pipe: { kind: 'custom', diameter, roughness: 9e-5 }, length, fittings: [] };
}

/** The last line is the end of the main, which has no wye of its own there. */
function mainAt(line: number, lines: number): Section[] {
  if (line === lines - 1) return [];
  const into = line === 0 ? 'collector' : `main-${line}`;
  const section = pipe(`main-${line + 1}`, into, 0.35 - (0.15 * line) / lines, 3 + line);
  return [line === 0 ? section : { ...section, join: straight }];
}

function lineAt(line: number, lines: number, each: number): Section[] {
  const isEnd = line === lines - 1;
  const from = isEnd ? `main-${line}` : `main-${line + 1}`;
  return Array.from({ length: each - 1 }, (_, i) => {
    const trunk = `line-${line + 1}-${i + 1}`;
    const into = i === 0 ? from : `line-${line + 1}-${i}`;
    const joins = i === 0 && !isEnd ? slanting : straight;
    const drop = (at: number, join: Section['join']) => ({
      ...pipe(`pipe-${line + 1}-${at + 1}`, trunk, 0.1 + 0.025 * (at % 2), 1.5 + (at % 3)),
      ...(join === undefined ? {} : { join }),
    });
    return [
      { ...pipe(trunk, into, 0.2 - 0.004 * i, 2.4), join: joins },
      drop(i, slanting),
      ...(i === each - 2 ? [drop(each - 1, straight)] : []),
    ];
  }).flat();
}

function dropsAt(line: number, each: number): Drop[] {
  return Array.from({ length: each }, (_, i) => ({
    id: `drop-${line + 1}-${i + 1}`,
    name: `${MACHINES[i % MACHINES.length]} ${line + 1}`,
    into: `pipe-${line + 1}-${i + 1}`,
    hood: { kind: 'coefficient', coefficient: 0.65 },
    gate: { travel: 1 },
  }));
}
