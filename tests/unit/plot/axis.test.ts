import { describe, expect, it } from 'vitest';
import { axis } from '../../../src/plot/axis.ts';
import { toDisplay } from '../../../src/units/quantity.ts';

describe('an axis', () => {
  it('has round ticks in the reader’s units, not in SI', () => {
    const us = axis('flow', 'us', 0.8, 4);
    expect(us.ticks.map(({ label }) => label)).toEqual(['0', '500', '1,000', '1,500']);
    expect(toDisplay('flow', 'us', us.ticks[2]?.value ?? 0)).toBeCloseTo(1000, 9);
    expect(us.unit).toBe('cfm');
    const metric = axis('pressure', 'metric', 2600, 5);
    expect(metric.ticks.map(({ value }) => value)).toEqual([0, 500, 1000, 1500, 2000, 2500]);
  });

  it('keeps every tick on the axis and its end where it was asked for', () => {
    for (let end = 0.01; end < 5; end *= 1.37) {
      const { ticks, end: same } = axis('flow', 'metric', end, 4);
      expect(same).toBe(end);
      expect(ticks.length).toBeGreaterThanOrEqual(2);
      expect(ticks.length).toBeLessThanOrEqual(9);
      expect(Math.max(...ticks.map(({ value }) => value))).toBeLessThanOrEqual(end * (1 + 1e-12));
    }
  });

  it('writes decimals only where the step needs them', () => {
    expect(axis('pressure', 'us', 200, 4).ticks.map(({ label }) => label)).toEqual([
      '0.0',
      '0.2',
      '0.4',
      '0.6',
      '0.8',
    ]);
  });

  it('refuses an empty axis', () => {
    expect(() => axis('flow', 'us', 0, 4)).toThrow(RangeError);
  });
});
