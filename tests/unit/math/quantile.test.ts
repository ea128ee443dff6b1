import { describe, expect, it } from 'vitest';
import { quantile } from '../../../src/math/quantile.ts';

const SAMPLE = [0.3, 1.7, 2.2, 2.9, 4.1, 7.7, 9];

describe('a quantile', () => {
  // Computed with NumPy, numpy.quantile(sample, part), whose default is the same definition.
  it.each([
    [0, 0.3],
    [0.05, 0.72],
    [0.1, 1.14],
    [0.37, 2.354],
    [0.5, 2.9],
    [0.95, 8.61],
    [1, 9],
  ])('at %f is the published one', (part, value) => {
    expect(quantile(SAMPLE, part)).toBeCloseTo(value, 12);
  });

  it('refuses what is none', () => {
    expect(() => quantile([], 0.5)).toThrow('sample of nothing');
    expect(() => quantile(SAMPLE, 1.1)).toThrow('0 to 1, not 1.1');
  });
});
