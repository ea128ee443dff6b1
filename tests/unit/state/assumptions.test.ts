import { describe, expect, it } from 'vitest';
import { airOf } from '../../../src/shop/shop-air.ts';
import type { Shop } from '../../../src/shop/schema/shop-schema.ts';
import { assumptions } from '../../../src/state/assumptions/assumptions.ts';
import { demoShop } from './demo-shop.ts';

const rowsOf = (shop: Shop) =>
  assumptions(shop, airOf(shop.air), 'us').flatMap(({ heading, rows }) =>
    rows.map((row) => ({ heading, ...row })),
  );

describe('what was assumed', () => {
  it('calls no figure verified without a source', () => {
    for (const row of rowsOf(demoShop())) {
      expect(row.sureness, row.what).not.toBe('');
      if (row.source === '') expect(row.sureness, row.what).not.toBe('verified');
    }
  });

  it('says each thing once', () => {
    const said = rowsOf(demoShop()).map(({ heading, what, value }) =>
      [heading, what, value].join('|'),
    );
    expect(new Set(said).size).toBe(said.length);
  });

  it('covers what the shop is made of', () => {
    const headings = new Set(rowsOf(demoShop()).map(({ heading }) => heading));
    expect(headings).toEqual(
      new Set([
        'Hoods and gates',
        'Pipes and hoses',
        'Fittings and wyes',
        'Collector',
        'Air',
        'What it is judged by',
      ]),
    );
  });

  it('marks what was put in the place of a tabulated figure', () => {
    const shop = demoShop();
    const [first, ...rest] = shop.sections;
    const bend = { kind: 'bend', angle: 90, radius: 1.5, coefficient: 0.5 } as const;
    const changed = { ...shop, sections: [{ ...first!, fittings: [bend] }, ...rest] };
    const overridden = rowsOf(changed).find(({ value }) => value === 'K 0.5');
    expect(overridden?.sureness).toBe('entered');
    expect(overridden?.source).toBe('');
  });
});
