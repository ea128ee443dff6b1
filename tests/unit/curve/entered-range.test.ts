import { describe, expect, it } from 'vitest';
import { collectorCurve } from '../../../src/curve/collector-curve.ts';
import { enteredRange, isWithinPoints } from '../../../src/curve/entered-range.ts';
import { chartAir, exampleSpec } from './example-spec.ts';

const points = [
  { flow: 0.1, pressure: 1500 },
  { flow: 0.4, pressure: 600 },
];

describe('the entered range', () => {
  it('reaches from the first to the last point, both included', () => {
    const curve = collectorCurve(exampleSpec({}, { points }), chartAir);
    expect(enteredRange(curve)).toEqual({ low: 0.1, high: 0.4 });
    expect([0.05, 0.1, 0.25, 0.4, 0.41].map((flow) => isWithinPoints(curve, flow))).toEqual([
      false,
      true,
      true,
      true,
      false,
    ]);
  });

  it('moves with the speed of the wheel', () => {
    const curve = collectorCurve(exampleSpec({ speedRatio: 0.5 }, { points }), chartAir);
    expect(enteredRange(curve)).toEqual({ low: 0.05, high: 0.2 });
  });
});
