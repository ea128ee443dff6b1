import { describe, expect, it } from 'vitest';
import { sobolPoints } from '../../../src/math/sobol.ts';

/** Computed with SciPy 1.17.1, scipy.stats.qmc.Sobol(d=8, scramble=False).random(64). */
const SCIPY: readonly (readonly [index: number, point: readonly number[]])[] = [
  [2, [0.75, 0.25, 0.25, 0.25, 0.75, 0.75, 0.25, 0.75]],
  [4, [0.375, 0.375, 0.625, 0.875, 0.375, 0.125, 0.375, 0.875]],
  [7, [0.125, 0.625, 0.375, 0.125, 0.125, 0.375, 0.625, 0.625]],
  [8, [0.1875, 0.3125, 0.9375, 0.4375, 0.5625, 0.3125, 0.4375, 0.9375]],
  [15, [0.0625, 0.9375, 0.5625, 0.3125, 0.6875, 0.1875, 0.8125, 0.3125]],
  [31, [0.03125, 0.53125, 0.90625, 0.96875, 0.96875, 0.78125, 0.34375, 0.53125]],
  [37, [0.921875, 0.640625, 0.578125, 0.921875, 0.765625, 0.296875, 0.171875, 0.796875]],
  [63, [0.015625, 0.796875, 0.359375, 0.453125, 0.859375, 0.140625, 0.578125, 0.140625]],
];

describe('the even sequence', () => {
  it.each(SCIPY)('has the published point %i', (index, point) => {
    expect([...sobolPoints(64, 8, 0)[index]!]).toEqual(point);
  });

  it.each([0, 1, 77])('has one point in each of 256 intervals on every axis, seed %i', (seed) => {
    const points = sobolPoints(256, 7, seed);
    for (let d = 0; d < 7; d++) {
      expect(new Set(points.map((point) => Math.floor(256 * point[d]!))).size).toBe(256);
    }
  });

  it('is another one for another seed and the same for the same', () => {
    expect(sobolPoints(9, 3, 5)).toEqual(sobolPoints(9, 3, 5));
    expect(sobolPoints(9, 3, 5)).not.toEqual(sobolPoints(9, 3, 6));
  });

  it('refuses dimensions that it has no directions for', () => {
    expect(() => sobolPoints(1, 9, 0)).toThrow('1 to 8, not 9');
    expect(() => sobolPoints(1, 0, 0)).toThrow(RangeError);
  });
});
