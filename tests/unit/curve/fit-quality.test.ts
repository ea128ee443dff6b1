import { describe, expect, it } from 'vitest';
import { availableSuction, collectorCurve } from '../../../src/curve/collector-curve.ts';
import { enteredPoints } from '../../../src/curve/entered-points.ts';
import { fitQuality } from '../../../src/curve/fit-quality.ts';
import { peakFlow } from '../../../src/curve/peak-flow.ts';
import { shaftPower } from '../../../src/curve/shaft-power.ts';
import { chartAir, exampleCurve, exampleSpec } from './example-spec.ts';

const smooth = { kind: 'smooth' } as const;

describe('fitQuality', () => {
  it('has nothing to tell of a line through the points', () => {
    const quality = fitQuality(exampleCurve);
    expect(quality).toMatchObject({ used: 6, rSquared: 1, rms: 0 });
  });

  it('tells of a level line between two readings at each flow', () => {
    // Two readings 20 Pa apart at each of two flows: the line is 10 Pa from all, whatever it is.
    const points = [
      { flow: 0.1, pressure: 1010 },
      { flow: 0.1, pressure: 990 },
      { flow: 0.3, pressure: 500, aside: true },
      { flow: 0.2, pressure: 590 },
      { flow: 0.2, pressure: 610 },
    ] as const;
    const quality = fitQuality({ points, fit: smooth });
    expect(quality.used).toBe(4);
    expect(quality.rms).toBeCloseTo(10, 9);
    // The scatter about the mean of 800: 210² + 190² + 210² + 190² = 160,400; 400 of it is left.
    expect(quality.rSquared).toBeCloseTo(1 - 400 / 160_400, 12);
    expect(quality.residuals.map(({ index }) => index)).toEqual([0, 1, 3, 4]);
    expect(quality.residuals.map(({ residual }) => Math.round(residual))).toEqual([
      10, -10, -10, 10,
    ]);
  });

  it('names the point that is farthest off by its place among all points', () => {
    const points = exampleCurve.points.map((point, i) =>
      i === 4 ? { flow: 0.4, pressure: 900 } : point,
    );
    const stray = [{ flow: 0.05, pressure: 1, aside: true } as const, ...points];
    const { largest } = fitQuality({ points: stray, fit: { kind: 'smooth', pieces: 1 } });
    expect(largest).toMatchObject({ index: 5, flow: 0.4 });
    expect(largest.residual).toBeLessThan(0);
  });

  it('has no R² where all pressures are one', () => {
    const points = [0.1, 0.2, 0.3].map((flow) => ({ flow, pressure: 700 }));
    expect(fitQuality({ points, fit: smooth })).toMatchObject({ rSquared: null });
  });
});

describe('a collector by scattered readings', () => {
  const readings = [0.45, 0.1, 0.3, 0.2, 0.2, 0, 0.4, 0.3].map((flow, i) => ({
    flow,
    pressure: 2000 + 800 * flow - 9000 * flow ** 2 + (i % 2 === 0 ? 12 : -12),
  }));
  const spec = exampleSpec(
    { filter: { kind: 'resistance', resistance: 500 }, speedRatio: 0.8 },
    { points: readings, fit: smooth, efficiency: 0.5 },
  );
  const curve = collectorCurve(spec, chartAir);

  it('runs on the smoothed line as on any other', () => {
    // The parabola itself at the flow of the test, scaled and less the filter; readings are 12 Pa off.
    const flow = 0.25;
    const expected = 0.64 * (2000 + 800 * flow - 9000 * flow ** 2) - 500 * 0.8 * flow;
    expect(Math.abs(availableSuction(curve, 0.8 * flow) - expected)).toBeLessThan(12);
  });

  it('finds the peak of the smoothed line, which is no reading', () => {
    // The parabola peaks at 800 / 18000.
    expect(peakFlow(curve)).toBeGreaterThan(0);
    expect(peakFlow(curve)).toBeLessThan(0.8 * 0.1);
  });

  it('gives its power by the smoothed line too', () => {
    const power = shaftPower({ ...spec, speedRatio: 1 }, chartAir, 0.3);
    const expected = (0.3 * (2000 + 240 - 810)) / 0.5;
    expect(power).toMatchObject({ kind: 'known', withinPoints: true });
    expect(Math.abs(power.kind === 'known' ? power.power - expected : 1e9)).toBeLessThan(0.3 * 24);
  });

  it('shows the readings where they were taken, not at the knots of the line', () => {
    const shown = enteredPoints(curve);
    expect(shown).toHaveLength(readings.length);
    const [first] = shown;
    expect(first!.flow).toBeCloseTo(0.36, 12);
    expect(first!.pressure).toBeCloseTo(0.64 * readings[0]!.pressure - 500 * 0.36, 9);
  });
});
