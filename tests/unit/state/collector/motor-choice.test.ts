import { describe, expect, it } from 'vitest';
import { exampleCurves } from '../../../../src/shop/example-curves.ts';
import { motorAs, motorKind } from '../../../../src/state/collector/motor-choice.ts';

describe('the way in which power is known', () => {
  it('goes from one to the other, and back to nothing', () => {
    const [curve] = exampleCurves();
    const bare = motorAs(curve!, 'unknown');
    expect(motorKind(bare)).toBe('unknown');
    const byEfficiency = motorAs(bare, 'efficiency');
    expect(byEfficiency.efficiency).toBe(0.45);
    const byPoints = motorAs({ ...byEfficiency, basis: { kind: 'total' } }, 'points');
    expect(motorKind(byPoints)).toBe('points');
    const last = byPoints.points.at(-1)!;
    // Air power over efficiency, by hand.
    expect(byPoints.power!.at(-1)!.power).toBeCloseTo((last.flow * last.pressure) / 0.45, 0);
    expect(motorAs(byPoints, 'efficiency').power).toBeUndefined();
  });
});
