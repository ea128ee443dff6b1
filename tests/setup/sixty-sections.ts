// A shop of sixty sections as people enter them: a trunk with thirty drops, pipes of the catalogue,
// lengths off a tape measure, names, needs in cfm, and the odd hose. Everything is drawn by chance.
import type { Drop } from '../../src/shop/schema/drop-schema.ts';
import type { Section } from '../../src/shop/schema/section-schema.ts';
import type { Shop } from '../../src/shop/schema/shop-schema.ts';
import { freshId } from '../../src/shop/edits/fresh-id.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { seededChance } from './seeded-chance.ts';

const MACHINES = [
  ['Table saw', 'table-saw'],
  ['Thickness planer', 'planer'],
  ['Jointer', 'jointer'],
  ['Band saw', 'band-saw'],
  ['Lathe', 'lathe'],
  ['Drum sander', 'drum-sander'],
  ['Router table', 'router-table'],
  ['Mitre saw', 'mitre-saw'],
  ['Floor sweep', 'floor-sweep'],
  ['Carving bench', undefined],
] as const;
const DROPS = 30;
const CFM = 4.719474432e-4;
const INCH = 0.0254;

export function sixtySections(seed: number): Shop {
  const chance = seededChance(seed);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(chance() * list.length)]!;
  const tape = (most: number) => (Math.round(chance() * most * 192) / 16 + 12) * INCH;
  const sectionIds: string[] = [];
  const dropIds: string[] = [];
  const fresh = (name: string, taken: string[]) => {
    const id = freshId(name, taken);
    taken.push(id);
    return id;
  };
  const bends = (): Section['fittings'] =>
    chance() < 0.4
      ? []
      : [{ kind: 'bend', angle: pick([45, 90]), radius: 1.5, count: pick([1, 2]) }];

  const sections: Section[] = [];
  const drops: Drop[] = [];
  let trunk = 'collector';
  for (let i = 0; i < DROPS; i++) {
    const [machine, kind] = pick(MACHINES);
    const trunkName = `main past ${machine.toLowerCase()}`;
    const id = fresh(trunkName, sectionIds);
    sections.push({
      id,
      name: trunkName,
      into: trunk,
      pipe: { kind: 'catalogue', family: 'galvanised-spiral', size: pick(['6in', '8in', '10in']) },
      length: tape(9),
      fittings: bends(),
      ...(i === 0 ? {} : { join: { kind: 'momentum', angle: 0 } as const }),
    });
    trunk = id;
    const name = `${machine.toLowerCase()} drop`;
    const feed = fresh(name, sectionIds);
    const isLast = i === DROPS - 1;
    sections.push({
      id: feed,
      name,
      into: id,
      pipe: {
        kind: 'catalogue',
        family: pick(['pvc-sewer-d2729', 'hose-wire-helix']),
        size: pick(['4in', '6in']),
      },
      length: tape(7),
      fittings: bends(),
      ...(isLast ? {} : { join: { kind: 'momentum', angle: pick([30, 45]) } as const }),
    });
    drops.push({
      id: fresh(machine, dropIds),
      name: machine,
      into: feed,
      hood: { kind: 'table', id: pick(['cabinet', 'plain-end', 'tapered-round-45']) },
      port: pick([4, 5]) * INCH,
      gate: { travel: 1 },
      need: pick([350, 400, 550, 800]) * CFM,
      ...(kind === undefined ? {} : { machine: kind }),
    });
  }
  const { note: _note, ...curve } = demoShop().collector.curve;
  const { note: _shopNote, ...rest } = demoShop();
  return {
    ...rest,
    name: 'Sixty sections',
    collector: { ...rest.collector, curve },
    sections,
    drops,
    gateSets: [{ id: 'both', name: 'Both', open: dropIds.slice(0, 2) }],
  };
}
