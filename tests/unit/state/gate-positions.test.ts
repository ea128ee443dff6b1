import { describe, expect, it } from 'vitest';
import {
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
});
