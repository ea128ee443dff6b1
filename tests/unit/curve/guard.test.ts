import { describe, expect, it } from 'vitest';
import { notNegative, positive } from '../../../src/curve/guard.ts';

describe('guards', () => {
  it('hand on what is right', () => {
    expect(positive('bore', 0.1)).toBe(0.1);
    expect(notNegative('coefficient', 0)).toBe(0);
  });

  it.each([0, -2, Number.NaN, Number.POSITIVE_INFINITY])(
    'name what must be above zero: %f',
    (n) => {
      expect(() => positive('bore', n)).toThrow(`bore must be a number above zero, not ${n}`);
    },
  );

  it.each([-2, Number.NaN, Number.POSITIVE_INFINITY])('name what must not be negative: %f', (n) => {
    expect(() => notNegative('coefficient', n)).toThrow(
      `coefficient must be zero or more, not ${n}`,
    );
  });
});
