import { describe, expect, it } from 'vitest';
import { availableSuction, type CollectorCurve } from '../../../src/curve/collector-curve.ts';
import { pchip } from '../../../src/math/pchip.ts';
import { plotExtent } from '../../../src/plot/plot-extent.ts';
import { sampleCurve } from './sample-curve.ts';

const plain = (flows: number[], pressures: number[]): CollectorCurve => ({
  spline: pchip(flows, pressures),
  flowScale: 1,
  pressureScale: 1,
  quadratic: 0,
  linear: 0,
});

describe('the extent of the plot', () => {
  it('reaches a little past free flow and above the highest suction', () => {
    const { flow, pressure } = plotExtent(sampleCurve);
    expect(availableSuction(sampleCurve, flow)).toBeLessThan(0);
    expect(availableSuction(sampleCurve, flow / 1.03)).toBeCloseTo(0, 6);
    for (let q = 0; q < flow; q += 0.005) {
      expect(availableSuction(sampleCurve, q)).toBeLessThan(pressure);
    }
  });

  it('does not follow a flat end for ever', () => {
    expect(plotExtent(plain([0, 0.4], [2000, 1999])).flow).toBeCloseTo(0.6 * 1.03, 12);
    expect(plotExtent(plain([0, 0.4], [2000, 2000])).flow).toBeCloseTo(0.6 * 1.03, 12);
  });

  it('still has axes where a collector gives nothing', () => {
    const { flow, pressure } = plotExtent(plain([0, 0.4], [-10, -20]));
    expect(flow).toBeGreaterThan(0);
    expect(pressure).toBeGreaterThan(0);
  });
});
