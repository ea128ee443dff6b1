import { describe, expect, it } from 'vitest';
import { fitKnots } from '../../../src/math/fit-knots.ts';

describe('fitKnots', () => {
  const even = (count: number) => Array.from({ length: count }, (_, i) => i);

  it.each([
    [2, 1],
    [3, 1],
    [5, 2],
    [8, 3],
    [9, 4],
    [40, 4],
  ])('makes of %s places %s pieces where nobody asks', (places, pieces) => {
    expect(fitKnots(even(places))).toHaveLength(pieces + 1);
  });

  it('makes no more pieces than the places can bear', () => {
    expect(fitKnots(even(6), 12)).toHaveLength(5);
    expect(fitKnots(even(2), 12)).toHaveLength(2);
  });

  it('counts readings at one setting once, however they scatter', () => {
    const clusters = [0, 0.1, 0.2, 0.3, 0.4].flatMap((at) => [at, at + 0.001, at + 0.002]);
    expect(fitKnots(clusters)).toHaveLength(3);
    expect(fitKnots(clusters)[2]).toBe(0.402);
  });

  it('lies densest where the places do', () => {
    expect([...fitKnots([0, 1, 2, 3, 4, 20, 40, 60, 80], 2)]).toEqual([0, 4, 80]);
  });
});
