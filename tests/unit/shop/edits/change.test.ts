import { describe, expect, it } from 'vitest';
import { changed } from '../../../../src/shop/edits/change.ts';
import {
  renameDrop,
  setGate,
  setGateTravel,
  setNeed,
} from '../../../../src/shop/edits/edit-drop.ts';
import { saveGateSet } from '../../../../src/shop/edits/edit-gate-sets.ts';
import { setLength } from '../../../../src/shop/edits/edit-section.ts';
import { renameShop } from '../../../../src/shop/edits/edit-shop.ts';
import { checkShop } from '../../../../src/shop/open-shop.ts';
import { freshId } from '../../../../src/shop/edits/fresh-id.ts';
import { tryEdit } from '../../../../src/shop/edits/try-edit.ts';
import type { Shop } from '../../../../src/shop/schema/shop-schema.ts';
import { smallShop } from '../small-shop.ts';

describe('an edit', () => {
  it('gives back the very same document if nothing changes', () => {
    expect(renameShop(smallShop.name)(smallShop)).toBe(smallShop);
    expect(renameDrop('saw', 'Band saw')(smallShop)).toBe(smallShop);
    expect(setGateTravel('saw', 1)(smallShop)).toBe(smallShop);
    expect(setLength('main', 6)(smallShop)).toBe(smallShop);
  });

  it('shares what it does not change', () => {
    const shop = renameDrop('saw', 'Jigsaw')(smallShop);
    expect(shop.sections).toBe(smallShop.sections);
    expect(shop.drops[0]).toBe(smallShop.drops[0]);
    expect(shop.drops[1]?.name).toBe('Jigsaw');
  });

  it('takes a key out rather than leave it undefined', () => {
    const shop = setNeed('saw', undefined, undefined)(setGate('saw', undefined)(smallShop));
    expect(Object.keys(shop.drops[1] ?? {})).toEqual(['id', 'name', 'into', 'hood']);
    expect(changed({ a: 1 }, { a: 2 })).toEqual({ a: 2 });
  });

  it('stops at a part that is not there', () => {
    expect(() => renameDrop('lathe', 'x')(smallShop)).toThrow(RangeError);
    expect(() => setLength('lathe', 1)(smallShop)).toThrow(RangeError);
  });

  it('saves a gate set once for each id, in the order of the drops', () => {
    const set = { id: 'both', name: 'All', open: ['saw', 'planer', 'saw'] };
    expect(saveGateSet(set)(smallShop).gateSets).toEqual([
      { id: 'both', name: 'All', open: ['planer', 'saw'] },
    ]);
  });
});

describe('tryEdit', () => {
  it('makes an edit that leaves the document in order', () => {
    expect(tryEdit(smallShop, setLength('main', 7))).toMatchObject({
      kind: 'edited',
      shop: { sections: [{ length: 7 }, {}, {}, {}] },
    });
  });

  it('says what a number would break', () => {
    expect(tryEdit(smallShop, setLength('main', -7))).toEqual({
      kind: 'refused',
      problems: [
        {
          place: 'sections[0].length (section "main")',
          message: 'is -7; it must be a number from 0 to 1000 [m]',
        },
      ],
    });
  });
});

describe('freshId', () => {
  it('makes an id of a name in any language', () => {
    expect(freshId('Säge, groß (links)', [])).toBe('sage-gro-links');
    expect(freshId('工房', [])).toBe('part');
    expect(freshId('x'.repeat(200), [])).toHaveLength(56);
  });

  it('counts on from what is taken, and keeps off the word for the collector', () => {
    expect(freshId('Main', ['main', 'main-2'])).toBe('main-3');
    expect(freshId('Collector', [])).toBe('collector-2');
  });
});

describe('checkShop beside a shop in order', () => {
  const [main, ...others] = smallShop.sections;
  const [planer, ...drops] = smallShop.drops;
  const { curve } = smallShop.collector;
  const faults: Readonly<Record<string, Partial<Shop>>> = {
    'a duct that leads nowhere': { sections: [{ ...main!, into: 'nowhere' }, ...others] },
    'a duct twice': { sections: [...smallShop.sections, main!] },
    'a drop without a duct': { drops: [{ ...planer!, into: 'nowhere' }, ...drops] },
    'no drop for a duct': { drops },
    'a set of what is not there': { gateSets: [{ id: 'a', name: 'A', open: ['lathe'] }] },
    'a range upside down': { carryingRange: { low: 20, high: 10 } },
    'a curve with a flow twice': {
      collector: {
        ...smallShop.collector,
        curve: { ...curve, points: [...curve.points, curve.points[0]!] },
      },
    },
    'a stock length twice': {
      purchase: {
        stockLengths: [
          { family: 'galvanized', length: 3 },
          { family: 'galvanized', length: 2 },
        ],
      },
    },
  };

  it.each(Object.entries(faults))('finds %s', (_, change) => {
    const broken = { ...smallShop, ...change };
    const found = checkShop(broken, smallShop);
    expect(found.length).toBeGreaterThan(0);
    expect(found).toEqual(checkShop(broken));
  });

  it('finds nothing in what is the very same', () => {
    expect(checkShop({ ...smallShop }, smallShop)).toEqual([]);
  });
});
