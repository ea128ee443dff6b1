// The list of the demo was counted by hand from its file, section by section.
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { costOf } from '../../../../src/shop/cut-list/cost.ts';
import { cutList } from '../../../../src/shop/cut-list/cut-list.ts';
import type { Section } from '../../../../src/shop/schema/section-schema.ts';
import { seededChance } from '../../../setup/seeded-chance.ts';
import { randomShop } from '../../../setup/random-shop.ts';
import { demoShop } from '../../state/demo-shop.ts';
import { smallShop } from '../small-shop.ts';

const TEN_FEET = 3.048;
const demo = cutList(demoShop(), TEN_FEET);
const amounts = (lines: readonly { readonly key: string; readonly amount: number }[]) =>
  Object.fromEntries(lines.map(({ key, amount }) => [key, amount]));

describe('the cut list of the demo', () => {
  it('has straight pipe by kind and size, with its length and lengths of stock', () => {
    const lines = demo.pipes.map(({ key, length, amount }) => [key, length.toFixed(2), amount]);
    expect(lines).toEqual([
      // Ten pieces, nine of them longer than half a length, and a main of 4.6 m that takes two.
      ['pipe-galvanised-spiral-6in', '25.60', 11],
      // Twelve pieces: two take a whole length each; the rest fit on seven.
      ['pipe-pvc-sewer-d2729-6in', '24.30', 9],
      ['pipe-pvc-sewer-d2729-4in', '1.80', 1],
    ]);
  });

  it('needs fewer lengths of a longer stock, of the family that was said only', () => {
    const stockLengths = [{ family: 'galvanised-spiral', length: 6.096 }];
    const list = cutList({ ...demoShop(), purchase: { stockLengths } }, TEN_FEET);
    expect(list.pipes.map(({ amount }) => amount)).toEqual([5, 9, 1]);
  });

  it('has hose as it lies and as it is bought, pulled tight', () => {
    const lines = demo.hoses.map(({ key, lying, amount }) => [
      key,
      lying.toFixed(2),
      amount.toFixed(2),
    ]);
    expect(lines).toEqual([
      // 1.5 m that lack 5 % of their length are cut from 1.58 m.
      ['hose-hose-smooth-bore-6in', '1.50', '1.58'],
      ['hose-hose-smooth-bore-4in', '1.20', '1.20'],
      // 2.4 m that lack 10 %, and 1.2 m that lack 5 %: 2.667 + 1.263.
      ['hose-hose-wire-helix-6in', '3.60', '3.93'],
      ['hose-hose-wire-helix-5in', '2.60', '2.60'],
    ]);
  });

  it('counts fittings by kind, angle, radius, pipe and size', () => {
    expect(amounts(demo.fittings)).toEqual({
      'bend-90-1.5-galvanised-spiral-6in': 2,
      'gored-90-1.5-5-galvanised-spiral-6in': 1,
      'bend-90-1.5-pvc-sewer-d2729-4in': 1,
      'bend-90-1.5-pvc-sewer-d2729-6in': 11,
      'bend-45-1.5-pvc-sewer-d2729-6in': 5,
      'mitre-45-pvc-sewer-d2729-6in': 3,
      'other-grate-pvc-sewer-d2729-6in': 1,
    });
  });

  it('counts wyes by their three sizes and the angle', () => {
    expect(amounts(demo.wyes)).toEqual({
      'wye-galvanised-spiral-6in-6in-6in-45': 9,
      'wye-galvanised-spiral-6in-6in-4in-45': 1,
      'wye-pvc-sewer-d2729-6in-6in-6in-45': 1,
    });
  });

  it('counts gates by size, the smaller ones on hoses', () => {
    expect(amounts(demo.gates)).toEqual({ 'gate-6in': 10, 'gate-5in': 1, 'gate-4in': 1 });
  });

  it('counts reducers, those put in by themselves too, and what joins two kinds of pipe', () => {
    expect(amounts(demo.changes)).toEqual({
      'reducer-cone-30-hose-wire-helix-5in-to-pvc-sewer-d2729-6in': 1,
      'reducer-cone-30-port-127mm-to-pvc-sewer-d2729-6in': 7,
      'reducer-cone-30-hose-smooth-bore-6in-to-port-127mm': 1,
      'reducer-cone-30-hose-wire-helix-6in-to-port-127mm': 2,
      'reducer-cone-30-hose-smooth-bore-4in-to-port-76.2mm': 1,
      'connector-hose-smooth-bore-4in-to-pvc-sewer-d2729-4in': 1,
      'connector-hose-smooth-bore-6in-to-pvc-sewer-d2729-6in': 1,
      'connector-hose-wire-helix-6in-to-pvc-sewer-d2729-6in': 2,
      'connector-galvanised-spiral-4in-to-pvc-sewer-d2729-4in': 1,
      'connector-galvanised-spiral-6in-to-pvc-sewer-d2729-6in': 10,
    });
  });

  it('costs what its prices come to, and says how many have none', () => {
    const prices = [
      { item: 'pipe-galvanised-spiral-6in', price: 20 },
      { item: 'hose-hose-wire-helix-5in', price: 10 },
      { item: 'gate-6in', price: 12.5 },
      { item: 'gate-9in', price: 99 },
    ];
    const cost = costOf(demo, { prices });
    expect(cost.items.get('pipe-galvanised-spiral-6in')).toEqual({ price: 20, cost: 220 });
    expect(cost.total).toBeCloseTo(220 + 26 + 125, 9);
    // 3 pipes, 4 hoses, 7 fittings, 3 wyes, 3 gates and 10 changes, less the three that have one.
    expect(cost.unpriced).toBe(27);
  });
});

describe('the cut list of a shop with pipes of its own', () => {
  it('tells them apart by diameter and wall', () => {
    const { pipes, wyes, changes } = cutList(smallShop, 3);
    expect(pipes.map(({ key, length, amount }) => [key, length, amount])).toEqual([
      ['pipe-own-0.09mm-150mm', 6, 2],
      ['pipe-own-0.09mm-125mm', 3, 1],
      ['pipe-own-0.09mm-100mm', 2, 1],
      ['pipe-own-1mm-100mm', 1, 1],
    ]);
    expect(amounts(wyes)).toEqual({ 'wye-own-0.09mm-150mm-125mm-100mm-45': 1 });
    expect(amounts(changes)).toEqual({ 'reducer-cone-20-own-0.09mm-125mm-to-own-1mm-100mm': 1 });
  });

  it('names the sizes of a wye without a straight run, and one entered by coefficients', () => {
    const joined = (joins: readonly Section['join'][]) => {
      const [main, run, end, saw] = smallShop.sections as [Section, Section, Section, Section];
      const sections = [main, { ...run, join: joins[0]! }, end, { ...saw, join: joins[1]! }];
      return Object.keys(amounts(cutList({ ...smallShop, sections }, 3).wyes));
    };
    const slanting = { kind: 'momentum', angle: 30 } as const;
    expect(joined([slanting, slanting])).toEqual(['wye-own-0.09mm-150mm-none-125mm-30-100mm-30']);
    const fixed = (coefficient: number) => ({ kind: 'fixed', coefficient, of: 'own' }) as const;
    expect(joined([fixed(0), fixed(0.3)])).toEqual(['wye-own-0.09mm-150mm-125mm-100mm-any']);
  });

  it('counts a reducer once whichever way the air goes through it', () => {
    const pipe = (diameter: number) => ({ kind: 'custom', diameter, roughness: 9e-5 }) as const;
    const section = (id: string, into: string, diameter: number): Section => ({
      id,
      into,
      pipe: pipe(diameter),
      length: 1,
      fittings: [],
    });
    const sections = [
      section('a', 'collector', 0.15),
      section('b', 'a', 0.1),
      section('c', 'b', 0.15),
    ];
    const drops = [{ ...smallShop.drops[0]!, into: 'c' }];
    expect(amounts(cutList({ sections, drops }, 3).changes)).toEqual({
      'reducer-cone-30-own-0.09mm-100mm-to-own-0.09mm-150mm': 2,
    });
  });
});

describe('the cut list of any shop', () => {
  it('has all of every section, cuts no more than it buys, and counts every gate and wye', () => {
    fc.assert(
      fc.property(fc.integer(), fc.integer({ min: 2, max: 25 }), (seed, drops) => {
        const options = { drops, wyes: 'momentum', curve: 'falling' } as const;
        const shop = randomShop(seededChance(seed), options);
        const list = cutList(shop, TEN_FEET);
        const wanted = shop.sections.reduce((sum, { length }) => sum + length, 0);
        const listed = list.pipes.reduce((sum, { length }) => sum + length, 0);
        expect(listed).toBeCloseTo(wanted, 6);
        for (const line of list.pipes) {
          const bought = line.amount * line.stockLength;
          const cut = line.stocks.flatMap(({ cuts, times }) => cuts.map((c) => times * c.length));
          expect(cut.reduce((sum, length) => sum + length, 0)).toBeCloseTo(line.length, 4);
          expect(bought).toBeGreaterThan(line.length - 1e-4);
        }
        const gates = list.gates.reduce((sum, { amount }) => sum + amount, 0);
        expect(gates).toBe(drops);
        const inlets = shop.sections.map(({ into }) => into);
        const wyes = new Set(inlets.filter((into, i) => inlets.indexOf(into) !== i));
        expect(list.wyes.reduce((sum, { amount }) => sum + amount, 0)).toBe(wyes.size);
      }),
      { numRuns: 60 },
    );
  });
});
