import { describe, expect, it } from 'vitest';
import { speedScale } from '../../../src/plot/speed-scale.ts';

const usual = { low: 17.78, high: 22.86 };

describe('a speed scale', () => {
  it('puts the range where its speeds are', () => {
    const scale = speedScale(200, usual);
    expect(scale.at(17.78)).toBe(scale.rangeStart);
    expect(scale.at(22.86)).toBe(scale.rangeEnd);
    expect(scale.at(0)).toBe(0);
    expect(scale.at(20.32)).toBeCloseTo((scale.rangeStart + scale.rangeEnd) / 2, 9);
  });

  it('pins what is past its end there and says so', () => {
    const scale = speedScale(200, usual);
    expect(scale.at(80)).toBe(200);
    expect(scale.isPastEnd(80)).toBe(true);
    expect(scale.isPastEnd(30.48)).toBe(false);
  });

  it('reads a reversed flow by its size', () => {
    const scale = speedScale(200, usual);
    expect(scale.at(-5)).toBe(scale.at(5));
  });

  it('refuses a range that does not rise, or no width', () => {
    expect(() => speedScale(0, usual)).toThrow('width');
    expect(() => speedScale(200, { low: 5, high: 5 })).toThrow('rise');
    expect(() => speedScale(200, { low: 0, high: 5 })).toThrow('rise');
  });
});
