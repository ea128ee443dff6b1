import { describe, expect, it } from 'vitest';
import { airOf } from '../../../src/shop/shop-air.ts';
import type { Shop } from '../../../src/shop/schema/shop-schema.ts';
import { assumptions } from '../../../src/state/assumptions/assumptions.ts';
import { branchedShop } from '../../setup/branched-shop.ts';
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

  it('says in one row what several hoods or sizes of pipe have in common', () => {
    const hoodsOf = (shop: Shop) =>
      rowsOf(shop)
        .map(({ what }) => what)
        .filter((what) => /hood/i.test(what));
    expect(hoodsOf(branchedShop(5, 8))).toEqual(['Every hood']);
    const demo = demoShop();
    const changed = demo.drops.map((drop, i) =>
      i < 2 ? { ...drop, hood: { kind: 'coefficient', coefficient: 1.5 } as const } : drop,
    );
    expect(hoodsOf({ ...demo, drops: changed })[0]).toBe('Hoods of Table saw and Blade guard');
    const pipes = rowsOf(branchedShop(2, 2)).filter(({ what }) =>
      what.startsWith('Pipe of your own'),
    );
    expect(pipes).toHaveLength(1);
    expect(pipes[0]?.value).toBe('13.78, 7.87, 4.92 and 3.94\u2009in. inside');
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
