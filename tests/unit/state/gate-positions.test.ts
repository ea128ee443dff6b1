import { describe, expect, it } from 'vitest';
import {
  followDrops,
  newcomersShut,
  positionsBetween,
  positionsWhenOpen,
  travelsOf,
  withGate,
} from '../../../src/state/gate-positions.ts';

const drops = [
  { id: 'saw', gate: { travel: 1 } },
  { id: 'planer', gate: { travel: 0.6 } },
  { id: 'sweep' },
];

describe('gate positions', () => {
  it('open the named drops as far as their document says, and shut the rest', () => {
    expect(travelsOf(drops, positionsWhenOpen(drops, ['planer']))).toEqual([0, 0.6, 1]);
    expect(travelsOf(drops, positionsWhenOpen(drops, []))).toEqual([0, 0, 1]);
  });

  it('stay with their drop when the list changes', () => {
    const positions = withGate(new Map(), 'planer', 0.3);
    expect(travelsOf(drops.toReversed(), positions)).toEqual([1, 0.3, 0]);
  });

  it('move one gate and leave the former positions as they were', () => {
    const before = positionsWhenOpen(drops, ['saw']);
    const after = withGate(before, 'saw', 0.25);
    expect(before.get('saw')).toBe(1);
    expect(after.get('saw')).toBe(0.25);
    expect(() => withGate(before, 'saw', 1.01)).toThrow(RangeError);
    expect(() => withGate(before, 'saw', Number.NaN)).toThrow(RangeError);
  });

  it('between two states pass evenly from one to the other', () => {
    const from = new Map([['saw', 1]]);
    const to = new Map([['planer', 0.6]]);
    const half = positionsBetween(from, to, 0.5);
    expect([half.get('saw'), half.get('planer')]).toEqual([0.5, 0.3]);
    expect(travelsOf(drops, positionsBetween(from, to, 1))).toEqual([0, 0.6, 1]);
  });

  it('follow a document that draws the open gate less far, but not a gate being tried', () => {
    const narrower = drops.with(1, { id: 'planer', gate: { travel: 0.5 } });
    const open = positionsWhenOpen(drops, ['planer']);
    expect(followDrops(open, drops, narrower).get('planer')).toBe(0.5);
    const tried = withGate(open, 'planer', 0.2);
    expect(followDrops(tried, drops, narrower)).toBe(tried);
  });

  it('leave open what was always open when it gets a gate', () => {
    const gated = drops.with(2, { id: 'sweep', gate: { travel: 1 } });
    expect(travelsOf(gated, followDrops(new Map(), drops, gated))).toEqual([0, 0, 1]);
  });

  it('come shut with a new drop, also where one of its id was open before', () => {
    const open = positionsWhenOpen(drops, ['saw']);
    const without = drops.slice(1);
    const kept = followDrops(open, drops, without);
    expect(kept.get('saw')).toBe(1);
    expect(travelsOf(drops, newcomersShut(kept, without, drops))).toEqual([0, 0, 1]);
    expect(newcomersShut(open, drops, without)).toBe(open);
  });
});
