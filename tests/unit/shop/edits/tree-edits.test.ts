import { describe, expect, it } from 'vitest';
import { addBranch, branchOff, type NewBranch } from '../../../../src/shop/edits/branch-off.ts';
import { setJoin, setTransition } from '../../../../src/shop/edits/edit-section.ts';
import {
  insertDownstream,
  insertUpstream,
  splitSection,
} from '../../../../src/shop/edits/insert-section.ts';
import { removeDrop, removeSection } from '../../../../src/shop/edits/remove-part.ts';
import { checkShop } from '../../../../src/shop/open-shop.ts';
import type { Shop } from '../../../../src/shop/schema/shop-schema.ts';
import { smallShop } from '../small-shop.ts';

/** Who empties into whom and by what join, as short lines. */
const runs = (shop: Shop) => {
  expect(checkShop(shop)).toEqual([]);
  return [
    ...shop.sections.map(({ id, into, join }) => {
      const how = join?.kind === 'momentum' ? join.angle : join?.coefficient;
      return `${id} > ${into}${how === undefined ? '' : ` ${join?.kind} ${how}`}`;
    }),
    ...shop.drops.map(({ id, into }) => `${id} * ${into}`),
  ];
};
const section = (shop: Shop, id: string) => shop.sections.find((each) => each.id === id);

const pipe = { kind: 'custom', diameter: 0.1, roughness: 0 } as const;
const added = { id: 'new', pipe, length: 1, fittings: [] };
const branch: NewBranch = {
  section: added,
  drop: { id: 'lathe', name: 'Lathe', hood: { kind: 'table', id: 'plain-end' } },
  join: { kind: 'momentum', angle: 30 },
};

const START = [
  'main > collector',
  'planer-run > main momentum 0',
  'planer-end > planer-run',
  'saw-run > main momentum 45',
  'planer * planer-end',
  'saw * saw-run',
];

describe('the small shop', () => {
  it('begins as these edits take it', () => {
    expect(runs(smallShop)).toEqual(START);
  });
});

describe('insertDownstream', () => {
  it('takes over the place at the wye', () => {
    expect(runs(insertDownstream('saw-run', added)(smallShop))).toEqual([
      ...START.slice(0, 3),
      'new > main momentum 45',
      'saw-run > new',
      ...START.slice(4),
    ]);
  });

  it('takes over the place at the collector', () => {
    expect(runs(insertDownstream('main', added)(smallShop)).slice(0, 2)).toEqual([
      'new > collector',
      'main > new',
    ]);
  });
});

describe('insertUpstream', () => {
  it('takes over the drop, or the wye', () => {
    expect(runs(insertUpstream('saw-run', added)(smallShop)).slice(3)).toEqual([
      'saw-run > main momentum 45',
      'new > saw-run',
      'planer * planer-end',
      'saw * new',
    ]);
    expect(runs(insertUpstream('main', added)(smallShop)).slice(0, 4)).toEqual([
      'main > collector',
      'new > main',
      'planer-run > new momentum 0',
      'planer-end > planer-run',
    ]);
  });

  it('refuses an id that a section has', () => {
    const taken = { ...added, id: 'main' };
    expect(() => insertUpstream('saw-run', taken)(smallShop)).toThrow(RangeError);
    expect(() => insertUpstream('nowhere', added)(smallShop)).toThrow(RangeError);
  });
});

describe('splitSection', () => {
  it('shares the length out and keeps the fittings downstream', () => {
    const shop = splitSection('main', 2, 'far')(smallShop);
    expect(section(shop, 'main')).toMatchObject({ length: 4, fittings: [{ kind: 'bend' }] });
    expect(section(shop, 'far')).toMatchObject({ length: 2, fittings: [], into: 'main' });
  });

  it('cuts nothing longer than it is', () => {
    expect(section(splitSection('main', 99, 'far')(smallShop), 'main')?.length).toBe(0);
  });
});

describe('addBranch', () => {
  it('makes what came in alone the straight run', () => {
    expect(runs(addBranch('planer-run', branch)(smallShop))).toEqual([
      ...START.slice(0, 2),
      'planer-end > planer-run momentum 0',
      'saw-run > main momentum 45',
      'new > planer-run momentum 30',
      ...START.slice(4),
      'lathe * new',
    ]);
  });

  it('drops a change of diameter that the wye now counts', () => {
    const shop = addBranch('planer-run', branch)(smallShop);
    expect(section(shop, 'planer-end')?.transition).toBeUndefined();
  });

  it('joins a wye in that wye’s own manner', () => {
    const fixed = setJoin('saw-run', { kind: 'fixed', coefficient: 0.2, of: 'own' })(smallShop);
    expect(runs(addBranch('main', branch)(fixed))).toContain('new > main fixed 0.28');
  });

  it('leaves a section alone that a drop feeds', () => {
    expect(addBranch('saw-run', branch)(smallShop)).toBe(smallShop);
  });
});

describe('branchOff', () => {
  it('cuts the section and joins between the parts', () => {
    expect(runs(branchOff('saw-run', 0.5, 'saw-far', branch)(smallShop))).toEqual([
      ...START.slice(0, 4),
      'saw-far > saw-run momentum 0',
      'new > saw-run momentum 30',
      'planer * planer-end',
      'saw * saw-far',
      'lathe * new',
    ]);
  });
});

describe('removeSection', () => {
  it('closes the gap, and the next pipe takes over the join', () => {
    expect(runs(removeSection('planer-run')(smallShop)).slice(0, 2)).toEqual([
      'main > collector',
      'planer-end > main momentum 0',
    ]);
  });

  it('hands the drop on', () => {
    expect(runs(removeSection('planer-end')(smallShop))).toContain('planer * planer-run');
  });

  it('does nothing where it would leave two roots or a drop without a pipe', () => {
    expect(removeSection('main')(smallShop)).toBe(smallShop);
    expect(removeSection('saw-run')(smallShop)).toBe(smallShop);
  });
});

describe('removeDrop', () => {
  it('takes the pipe that only it used, the wye that is none any more, and its place in sets', () => {
    const shop = removeDrop('planer')(smallShop);
    expect(runs(shop)).toEqual(['main > collector', 'saw-run > main', 'saw * saw-run']);
    expect(shop.gateSets[0]?.open).toEqual(['saw']);
  });

  it('leaves the last drop', () => {
    const last = removeDrop('planer')(smallShop);
    expect(removeDrop('saw')(last)).toBe(last);
  });
});

describe('setJoin', () => {
  it('brings the other inlets to the same kind', () => {
    const shop = setJoin('saw-run', { kind: 'fixed', coefficient: 0.2, of: 'own' })(smallShop);
    expect(runs(shop).slice(1, 4)).toEqual([
      'planer-run > main fixed 0',
      'planer-end > planer-run',
      'saw-run > main fixed 0.2',
    ]);
  });

  it('does nothing where there is no wye', () => {
    expect(setJoin('main', { kind: 'momentum', angle: 30 })(smallShop)).toBe(smallShop);
  });
});

describe('setTransition', () => {
  it('does nothing at a wye or at the collector', () => {
    for (const id of ['main', 'saw-run', 'planer-run']) {
      expect(setTransition(id, { kind: 'sudden' })(smallShop)).toBe(smallShop);
    }
    const shop = setTransition('planer-end', undefined)(smallShop);
    expect(section(shop, 'planer-end')).not.toHaveProperty('transition');
  });
});
