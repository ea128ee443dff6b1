import { describe, expect, it } from 'vitest';
import { availableSuction, collectorCurve } from '../../../src/curve/collector-curve.ts';
import { enteredRange } from '../../../src/curve/entered-range.ts';
import { shaftPower } from '../../../src/curve/shaft-power.ts';
import { chartAir, exampleCurve, exampleSpec } from './example-spec.ts';

describe('a point that is set aside', () => {
  const kept = exampleCurve.points.slice(0, 5);
  const stray = { flow: 0.5, pressure: 500, aside: true } as const;
  const without = exampleSpec({}, { points: kept, efficiency: 0.5 });
  const aside = exampleSpec({}, { points: [stray, ...kept], efficiency: 0.5 });

  it('changes nothing, wherever it stands', () => {
    const { points: _, ...line } = collectorCurve(aside, chartAir);
    const { points: __, ...other } = collectorCurve(without, chartAir);
    expect(line).toEqual(other);
    for (const flow of [0, 0.15, 0.45]) {
      expect(shaftPower(aside, chartAir, flow)).toEqual(shaftPower(without, chartAir, flow));
    }
  });

  it('is not where the curve is known', () => {
    expect(enteredRange(collectorCurve(aside, chartAir)).high).toBe(0.4);
    expect(shaftPower(aside, chartAir, 0.45)).toMatchObject({ withinPoints: false });
  });

  it('counts again once it is used', () => {
    const used = exampleSpec({}, { points: [...kept, { flow: 0.5, pressure: 500 }] });
    expect(availableSuction(collectorCurve(used, chartAir), 0.5)).toBe(500);
  });
});
