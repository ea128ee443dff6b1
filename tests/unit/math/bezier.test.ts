import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BezierPoint, bezierSegments } from '../../../src/math/bezier.ts';
import { valueAt } from '../../../src/math/hermite.ts';
import { pchip } from '../../../src/math/pchip.ts';

const humped = pchip([0, 0.1, 0.2, 0.3, 0.4, 0.5], [2000, 2060, 2040, 1800, 1300, 500]);

const mix = (a: BezierPoint, b: BezierPoint, t: number): BezierPoint => ({
  x: a.x + t * (b.x - a.x),
  y: a.y + t * (b.y - a.y),
});

describe('the Bézier segments of a spline', () => {
  const segments = bezierSegments(humped);

  it('are one for each pair of neighbouring points, end to end', () => {
    expect(segments).toHaveLength(5);
    segments.slice(1).forEach((segment, i) => {
      expect(segment.from).toEqual(segments[i]!.to);
    });
    expect(segments[0]!.from).toEqual({ x: 0, y: 2000 });
    expect(segments[4]!.to).toEqual({ x: 0.5, y: 500 });
  });

  it('trace the very spline, by De Casteljau', () => {
    const anySegment = fc.constantFrom(...segments);
    fc.assert(
      fc.property(anySegment, fc.double({ min: 0, max: 1, noNaN: true }), (s, t) => {
        const before = mix(mix(s.from, s.leaving, t), mix(s.leaving, s.arriving, t), t);
        const after = mix(mix(s.leaving, s.arriving, t), mix(s.arriving, s.to, t), t);
        const traced = mix(before, after, t);
        // Rounding of x times the steepest slope, 9500 Pa·s/m³, stays below 1e-11.
        expect(Math.abs(traced.y - valueAt(humped, traced.x))).toBeLessThan(1e-10);
      }),
    );
  });
});
