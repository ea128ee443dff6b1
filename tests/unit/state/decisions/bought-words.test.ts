import { describe, expect, it } from 'vitest';
import { editOf } from '../../../../src/shop/decisions/choice.ts';
import { pipeBought } from '../../../../src/shop/decisions/pipe-bought.ts';
import { boughtWords } from '../../../../src/state/decisions/bought-words.ts';
import { demoShop } from '../demo-shop.ts';

const shop = demoShop();
const steel = (size: string) => ({ kind: 'catalogue', family: 'galvanised-spiral', size }) as const;

describe('what has to be bought', () => {
  it('is nothing for the same shop', () => {
    expect(pipeBought(shop, shop)).toEqual([]);
    expect(boughtWords(shop, shop, 'us')).toBe('nothing');
  });

  it('is the whole length of sections that become another pipe, by pipe', () => {
    const sections = ['main-1', 'main-2'] as const;
    const pipes = sections.map((section) => ({ section, pipe: steel('8in') }));
    const wider = editOf({ kind: 'pipes', pipes })(shop);
    const lengths = sections.map((id) => shop.sections.find((each) => each.id === id)!.length);
    expect(pipeBought(shop, wider)).toEqual([
      { pipe: steel('8in'), length: lengths[0]! + lengths[1]! },
    ]);
  });

  it('is only what is added where a section grows, and nothing for one that is cut in two', () => {
    const pipe = shop.sections.find(({ id }) => id === 'main-2')!.pipe;
    const drop = {
      id: 'new',
      name: 'New',
      hood: { kind: 'table', id: 'plain-end' },
      gate: { travel: 1 },
    } as const;
    const target = {
      kind: 'new',
      section: 'main-2',
      upstreamLength: 0.5,
      drop,
      join: { kind: 'momentum', angle: 45 },
    } as const;
    const added = editOf({ kind: 'run', run: { target, pipe, fittings: [] }, length: 3 })(shop);
    const bought = pipeBought(shop, added);
    expect(bought).toHaveLength(1);
    expect(bought[0]!.pipe).toEqual(pipe);
    expect(bought[0]!.length).toBeCloseTo(3, 9);
  });

  it('names another collector', () => {
    const curve = { ...shop.collector.curve, name: 'Another one' };
    const other = editOf({ kind: 'collector', collector: { ...shop.collector, curve } })(shop);
    expect(boughtWords(shop, other, 'metric')).toBe('collector: Another one');
  });
});
