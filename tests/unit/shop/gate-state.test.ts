import { describe, expect, it } from 'vitest';
import { openTravel, travelsWhenOpen, usualStates } from '../../../src/shop/gate-state.ts';
import { smallShop } from './small-shop.ts';

const drops = [{ id: 'a', gate: { travel: 0.4 } }, { id: 'b', gate: { travel: 0 } }, { id: 'c' }];

describe('travelsWhenOpen', () => {
  it('pulls an open gate to its travel, a gate kept shut right out, and shuts the rest', () => {
    expect(travelsWhenOpen(drops, ['a', 'b'])).toEqual([0.4, 1, 1]);
    expect(travelsWhenOpen(drops, ['b'])).toEqual([0, 1, 1]);
    expect(travelsWhenOpen(drops, [])).toEqual([0, 0, 1]);
  });

  it('refuses an id that no drop has', () => {
    expect(() => travelsWhenOpen(drops, ['d'])).toThrow(RangeError);
  });
});

describe('openTravel', () => {
  it('is never 0', () => {
    expect(drops.map(openTravel)).toEqual([0.4, 1, 1]);
  });
});

describe('usualStates', () => {
  it('has each drop alone and then the gate sets, in the order of the document', () => {
    expect(usualStates(smallShop)).toEqual([
      { kind: 'alone', name: 'Planer', open: ['planer'] },
      { kind: 'alone', name: 'Band saw', open: ['saw'] },
      { kind: 'gate set', name: 'Both', open: ['planer', 'saw'] },
    ]);
  });
});
