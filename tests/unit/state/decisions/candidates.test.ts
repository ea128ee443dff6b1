import { describe, expect, it } from 'vitest';
import { exampleCurves } from '../../../../src/shop/example-curves.ts';
import type { Curve } from '../../../../src/shop/schema/curve-schema.ts';
import { candidatesFor } from '../../../../src/state/decisions/candidates.ts';
import { studyOn } from '../../../../src/state/decisions/question.ts';
import { finish } from '../../../../src/study/progress.ts';
import { demoShop } from '../demo-shop.ts';

const shop = demoShop();
const examples = exampleCurves();
const [wallBag] = examples as [Curve];
const ours: Curve = {
  ...wallBag,
  name: 'Ours',
  price: { amount: 700, currency: 'EUR' },
  basis: { kind: 'tap', diameter: 0.15 },
  density: 1.1,
};

describe('the collectors that are set side by side', () => {
  it('are that of the shop, the reader’s own and the examples, each told by whose it is', () => {
    const all = candidatesFor(shop, [{ id: 'a', curve: ours }], examples);
    expect(all.map(({ origin }) => origin)).toEqual([
      'today',
      'own',
      ...Array.from({ length: examples.length - 1 }, () => 'example'),
    ]);
    expect(all[0]!.collector).toBe(shop.collector);
    expect(all[1]).toMatchObject({ key: 'own a', name: 'Ours' });
  });

  it('are there once where two are alike in all that counts, with the price as well', () => {
    const copy = { ...wallBag, note: 'kept on Monday' };
    const alike = candidatesFor(shop, [{ id: 'a', curve: copy }], examples);
    expect(alike.filter(({ name }) => name === wallBag.name)).toMatchObject([{ origin: 'own' }]);
    const cheaper = { ...wallBag, price: { amount: 99, currency: 'USD' } };
    const priced = candidatesFor(shop, [{ id: 'a', curve: cheaper }], examples);
    expect(priced.filter(({ name }) => name.includes(wallBag.name))).toMatchObject([
      { name: wallBag.name, origin: 'own' },
      { name: `example ${wallBag.name}`, origin: 'example' },
    ]);
  });

  it('have a name each, whatever the reader’s own are called', () => {
    const own = [1, 2, 3].map((count) => ({
      id: `${count}`,
      curve: { ...ours, name: shop.collector.curve.name, density: 1 + count / 100 },
    }));
    const names = candidatesFor(shop, own, examples).map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    expect(names.slice(1, 4)).toEqual([
      `your ${shop.collector.curve.name}`,
      `your ${shop.collector.curve.name} (2)`,
      `your ${shop.collector.curve.name} (3)`,
    ]);
  });

  it('are solved on one footing, and the answer keeps whose each is and what it costs', () => {
    const candidates = candidatesFor(shop, [{ id: 'a', curve: ours }], [wallBag]);
    const { rows } = finish(studyOn('collectors', { shop, candidates }));
    expect(rows.map(({ name, origin }) => [name, origin])).toEqual([
      [shop.collector.curve.name, 'today'],
      ['Ours', 'own'],
      [wallBag.name, 'example'],
    ]);
    const own = rows[1]!;
    expect(own.price).toEqual({ amount: 700, currency: 'EUR' });
    expect(own.notes.map(({ kind }) => kind)).toEqual(expect.arrayContaining(['tap', 'density']));
    // The same points, taken at a tap and in thinner air, are not the same collector.
    expect(own.states[0]!.point!.flow).not.toBe(rows[2]!.states[0]!.point!.flow);
    expect(own.choice).toMatchObject({ collector: { curve: ours } });
  });
});
