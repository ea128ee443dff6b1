import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { availableSuction, collectorCurve } from '../../../src/curve/collector-curve.ts';
import type { CollectorSpec } from '../../../src/curve/collector-spec.ts';
import { freeFlow } from '../../../src/curve/free-flow.ts';
import { chartAir, exampleSpec } from './example-spec.ts';

const line = (...pressures: number[]) => ({
  points: pressures.map((pressure, i) => ({ flow: (i + 1) / 10, pressure })),
});
const freeFlowOf = (spec: CollectorSpec) => freeFlow(collectorCurve(spec, chartAir));

describe('free flow', () => {
  it('lies past the last point, along the end slope', () => {
    expect(freeFlowOf(exampleSpec({}, line(1000, 500)))).toBeCloseTo(0.3, 12);
  });

  it('lies between two points where the curve crosses zero there', () => {
    expect(freeFlowOf(exampleSpec({}, line(900, 300, -300)))).toBeCloseTo(0.25, 12);
  });

  it('is at the point that has no suction', () => {
    expect(freeFlowOf(exampleSpec({}, line(900, 300, 0)))).toBeCloseTo(0.3, 12);
  });

  it('lies before the first point where a strong filter uses it up there', () => {
    const filter = { kind: 'resistance', resistance: 20_000 } as const;
    // 1500 − 5000 Q back from the first point; 25 000 Q = 1500.
    expect(freeFlowOf(exampleSpec({ filter }, line(1000, 500)))).toBeCloseTo(0.06, 12);
  });

  it('is none without suction', () => {
    expect(freeFlowOf(exampleSpec({}, line(-100, -200)))).toBe(0);
  });

  it('has no end where nothing takes the suction away', () => {
    expect(freeFlowOf(exampleSpec({}, line(700, 700)))).toBe(Number.POSITIVE_INFINITY);
    expect(freeFlowOf(exampleSpec({}, line(700, 800)))).toBe(Number.POSITIVE_INFINITY);
  });

  it('is where the suction is zero, for any filter and separator', () => {
    const resistance = fc.double({ min: 0, max: 2e4, noNaN: true });
    const coefficient = fc.double({ min: 0, max: 50, noNaN: true });
    fc.assert(
      fc.property(resistance, coefficient, (r, k) => {
        const spec = exampleSpec({
          filter: { kind: 'resistance', resistance: r },
          separator: { kind: 'coefficient', coefficient: k, diameter: 0.15 },
        });
        const curve = collectorCurve(spec, chartAir);
        // The terms are up to 5e3 Pa large; a flow to its last digit leaves 1e-10 of that.
        expect(Math.abs(availableSuction(curve, freeFlow(curve)))).toBeLessThan(1e-6);
      }),
    );
  });
});
