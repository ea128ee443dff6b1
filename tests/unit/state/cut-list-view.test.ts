// What the cut list says in words, in both unit systems, of the demo.
import { describe, expect, it } from 'vitest';
import { cutListRows, cutPlanRows } from '../../../src/state/cut-list/cut-list-table.ts';
import { cutListView } from '../../../src/state/cut-list/cut-list-view.ts';
import { branchedShop } from '../../setup/branched-shop.ts';
import { smallShop } from '../shop/small-shop.ts';
import { demoShop } from './demo-shop.ts';

const plain = (words: string) => words.replace(/[\u2009\u202f\u00a0]/g, ' ');
const group = (view: ReturnType<typeof cutListView>, heading: string) =>
  (view.groups.find((each) => each.heading === heading)?.rows ?? []).map(({ what, amount }) =>
    plain(`${what}: ${amount}`),
  );

describe('the cut list in words', () => {
  const us = cutListView(demoShop(), 'us');

  it('says how many lengths of which stock', () => {
    expect(group(us, 'Pipe')).toEqual([
      `Galvanised steel, spiral, 6 in.: 11 lengths of 10' 0" (83' 11 7/8" in 10 pieces)`,
      `PVC sewer and drain pipe, D2729, 6 in.: 9 lengths of 10' 0" (79' 8 11/16" in 12 pieces)`,
      `PVC sewer and drain pipe, D2729, 4 in.: 1 length of 10' 0" (5' 10 7/8" in one piece)`,
    ]);
    const metric = cutListView(demoShop(), 'metric');
    expect(group(metric, 'Pipe')[0]).toBe(
      'Galvanised steel, spiral, 6 in.: 11 lengths of 3.00 m (25.60 m in 10 pieces)',
    );
    expect(group(metric, 'Hose')[0]).toBe(
      'Flexible hose, smooth bore, 6 in.: 1.579 m (1.50 m as it lies, pushed together)',
    );
  });

  it('names wyes, gates, reducers and connectors by their sizes', () => {
    expect(group(us, 'Wyes')[1]).toBe(
      'Wye 6 in., from 6 in. straight on, 4 in. at 45°: galvanised steel (spiral): 1',
    );
    expect(group(us, 'Gates')).toEqual([
      'Blast gate 6 in.: 10',
      'Blast gate 5 in.: 1',
      'Blast gate 4 in.: 1',
    ]);
    const changes = group(us, 'Reducers and connectors');
    expect(changes).toContain(
      'Reducer from 5 in. machine port to 6 in. PVC sewer and drain pipe (D2729), cone of 30°: 7',
    );
    expect(changes).toContain(
      'Connector from 6 in. PVC sewer and drain pipe (D2729) to 6 in. galvanised steel (spiral): 10',
    );
  });

  it('lists what is made of one kind of pipe together, the widest first', () => {
    const drawn = group(cutListView(branchedShop(5, 8), 'us'), 'Wyes');
    const widths = drawn.map((words) => Number.parseFloat(words.slice('Wye '.length)));
    expect(widths).toHaveLength(11);
    expect(widths).toEqual(widths.toSorted((a, b) => b - a));
    const made = group(us, 'Bends and other fittings').map((words) => words.includes('galvanised'));
    expect(made).toEqual([true, true, false, false, false, false, false]);
  });

  it('names pipes of the maker’s own by their diameter in the reader’s units', () => {
    expect(group(cutListView(smallShop, 'us'), 'Gates')).toEqual(['Blast gate 3.94 in.: 2']);
    const metric = cutListView(smallShop, 'metric');
    expect(group(metric, 'Gates')).toEqual(['Blast gate 100 mm: 2']);
    expect(group(metric, 'Reducers and connectors')).toEqual([
      'Reducer from 100 mm pipe of your own to 125 mm pipe of your own, cone of 20°: 1',
    ]);
  });

  it('leaves out groups without an item', () => {
    const headings = cutListView(branchedShop(2, 2), 'us').groups.map(({ heading }) => heading);
    expect(headings).toEqual(['Pipe', 'Wyes', 'Gates']);
  });

  it('says how each length is cut, for which section, and what is left', () => {
    const pvc = us.plans[1]!;
    expect(plain(pvc.heading)).toBe(`PVC sewer and drain pipe, D2729, 6 in.: 9 × 10' 0"`);
    expect(pvc.rows).toHaveLength(9);
    expect(pvc.rows[2]).toEqual({
      times: '1',
      cuts: [
        { length: `7' 10 1/2"`, section: 'jointer drop' },
        { length: `1' 9 3/4"`, section: 'floor sweep drop' },
      ],
      left: `3 3/4"`,
    });
    expect(pvc.rows[0]!.left).toBe('nothing');
  });
});

describe('the cutting plans as a table', () => {
  it('have a row for all lengths that are cut alike', () => {
    const rows = cutPlanRows(cutListView(demoShop(), 'metric').plans);
    expect(rows).toHaveLength(11 + 9 + 1);
    expect(rows).toContainEqual([
      'PVC sewer and drain pipe, D2729, 6 in.: 9 × 3.00 m',
      '1',
      '2.40 m jointer drop + 0.60 m floor sweep drop',
      'nothing',
    ]);
  });
});

describe('prices on the cut list', () => {
  const prices = [
    // 3.25 for a foot; a foot is 0.3048 m.
    { item: 'hose-hose-wire-helix-5in', price: 3.25 / 0.3048 },
    { item: 'gate-6in', price: 1018.25 },
  ];
  const shop = { ...demoShop(), purchase: { currency: 'EUR', prices } };

  it('are for a foot or a metre of hose, and for one of all else', () => {
    const us = cutListView(shop, 'us');
    const hose = us.groups[1]!.rows[3]!;
    // 2.6 m are 8.530 ft.
    expect(hose).toMatchObject({ per: 'a foot', priceText: '3.25', cost: '27.72' });
    const metric = cutListView(shop, 'metric').groups[1]!.rows[3]!;
    expect(metric).toMatchObject({ per: 'a metre', priceText: '10.66', cost: '27.72' });
  });

  it('add up, thousands apart, with the currency', () => {
    expect(plain(cutListView(shop, 'us').total ?? '')).toBe('10,210.22 EUR');
    expect(plain(cutListView(shop, 'metric').total ?? '')).toBe('10 210.22 EUR');
    expect(cutListView(shop, 'us').unpriced).toBe(28);
    expect(cutListView(demoShop(), 'us').total).toBeUndefined();
  });

  it('stand in the table that is saved, with the total last', () => {
    const rows = cutListRows(cutListView(shop, 'us'));
    expect(rows).toHaveLength(31);
    expect(rows.at(-1)).toEqual(['Total', '', '', '', 'EUR', '10210.22']);
    expect(rows).toContainEqual(['Blast gate 6 in.', 'Gates', '10', '1018.25', 'each', '10182.50']);
    expect(new Set(rows.map(({ length }) => length))).toEqual(new Set([6]));
  });
});
