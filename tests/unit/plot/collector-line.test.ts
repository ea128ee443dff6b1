import { describe, expect, it } from 'vitest';
import { availableSuction } from '../../../src/curve/collector-curve.ts';
import { collectorLine, enteredKnots } from '../../../src/plot/collector-line.ts';
import { plotFrame } from '../../../src/plot/frame.ts';
import { pchip } from '../../../src/math/pchip.ts';
import { sampleCurve } from './sample-curve.ts';

const frame = plotFrame({ left: 0, top: 0, right: 600, bottom: 400 }, 0.6, 3000);

describe('the collector’s line', () => {
  it('marks each entered point where the collector runs now', () => {
    const { points } = collectorLine(sampleCurve, frame);
    expect(points).toHaveLength(6);
    expect(points[2]?.x).toBeCloseTo(frame.x(0.22), 9);
    expect(points[2]?.y).toBeCloseTo(frame.y(availableSuction(sampleCurve, 0.22)), 9);
  });

  it('marks readings that it is smoothed between where they were taken, those set aside apart', () => {
    const points = [
      { flow: 0.1, pressure: 2100 },
      { flow: 0.1, pressure: 2000 },
      { flow: 0.2, pressure: 900, aside: true },
    ] as const;
    const { points: shown, aside } = collectorLine({ ...sampleCurve, points }, frame);
    expect(aside).toHaveLength(1);
    expect(aside[0]!.x).toBeCloseTo(frame.x(0.22), 9);
    expect(shown).toHaveLength(2);
    expect(shown[0]!.x).toBe(shown[1]!.x);
    expect(shown[1]!.y).toBeGreaterThan(shown[0]!.y);
  });

  it('is unknown beyond the last point, and before the first if that isn’t at no flow', () => {
    expect(collectorLine(sampleCurve, frame).unknown).toHaveLength(1);
    const late = { ...sampleCurve, spline: pchip([0.1, 0.3], [2000, 1500]) };
    expect(collectorLine(late, frame).unknown).toHaveLength(2);
  });

  it('leaves out points whose suction is used up here', () => {
    const weak = { ...sampleCurve, linear: 2000 };
    const inside = enteredKnots(weak).filter(({ pressure }) => pressure >= 0);
    expect(inside.length).toBeLessThan(6);
    expect(collectorLine(weak, frame).points).toHaveLength(inside.length);
  });

  it('lets labels keep clear of the unknown stretch too', () => {
    const { strokes } = collectorLine(sampleCurve, frame);
    expect(strokes.all.length).toBeGreaterThan(strokes.known.length);
    expect(strokes.all.at(-1)?.to.x).toBeCloseTo(600, 9);
  });
});
