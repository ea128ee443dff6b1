import { describe, expect, it } from 'vitest';
import { collectorCurve } from '../../../src/curve/collector-curve.ts';
import { peakFlow } from '../../../src/curve/peak-flow.ts';
import { chartAir, exampleSpec } from './example-spec.ts';

const peakOf = (pressures: readonly number[]) => {
  const points = pressures.map((pressure, i) => ({ flow: i / 10, pressure }));
  return peakFlow(collectorCurve(exampleSpec({}, { points }), chartAir));
};

describe('the peak of a curve', () => {
  it('is the point after which it only falls', () => {
    expect(peakOf([2000, 2060, 2040, 1800])).toBe(0.1);
  });

  it('lies past a dip, so that the dip is left of it', () => {
    expect(peakOf([1100, 1050, 1150, 1250, 1200, 900])).toBe(0.3);
  });

  it('counts a second, lower hump as well', () => {
    expect(peakOf([1000, 1400, 1200, 1300, 800])).toBe(0.3);
  });

  it('is at no flow where the curve never rises', () => {
    expect(peakOf([2000, 2000, 1500])).toBe(0);
  });

  it('is the last point where the curve never falls', () => {
    expect(peakOf([100, 200, 300])).toBe(0.2);
  });

  it('moves with the speed of the wheel', () => {
    const curve = collectorCurve(exampleSpec({ speedRatio: 0.5 }), chartAir);
    expect(peakFlow(curve)).toBe(0.05);
  });
});
