// The drawn curve is the collector's own cubic, not something near it.
import { describe, expect, it } from 'vitest';
import { availableSuction } from '../../../src/curve/collector-curve.ts';
import { bezierPath } from '../../../src/plot/bezier-path.ts';
import { enteredKnots } from '../../../src/plot/collector-line.ts';
import { plotFrame } from '../../../src/plot/frame.ts';
import { sampleCurve } from './sample-curve.ts';

const frame = plotFrame({ left: 50, top: 10, right: 650, bottom: 410 }, 0.6, 3000);
const numbers = (path: string) => [...path.matchAll(/-?[\d.]+/g)].map(Number);

describe('a path through knots', () => {
  it('lies on the collector’s curve all along, to the rounding of its digits', () => {
    const [x0 = 0, y0 = 0, ...rest] = numbers(bezierPath(enteredKnots(sampleCurve), frame));
    let from = [x0, y0] as const;
    expect(rest).toHaveLength(5 * 6);
    for (let i = 0; i < rest.length; i += 6) {
      const [ax = 0, ay = 0, bx = 0, by = 0, x = 0, y = 0] = rest.slice(i, i + 6);
      for (const t of [0.1, 0.35, 0.5, 0.8, 1]) {
        const mix = (p: number, q: number, r: number, s: number) =>
          (1 - t) ** 3 * p + 3 * (1 - t) ** 2 * t * q + 3 * (1 - t) * t ** 2 * r + t ** 3 * s;
        const flow = ((mix(from[0], ax, bx, x) - 50) / 600) * 0.6;
        const pressure = ((410 - mix(from[1], ay, by, y)) / 400) * 3000;
        // Half a thousandth of a pixel up and across, at the steepest of 14,000 Pa·s/m³.
        expect(Math.abs(pressure - availableSuction(sampleCurve, flow))).toBeLessThan(0.02);
      }
      from = [x, y];
    }
  });

  it('starts and ends at the outer knots', () => {
    const path = bezierPath(
      [
        { flow: 0, pressure: 3000, slope: 0 },
        { flow: 0.6, pressure: 0, slope: 0 },
      ],
      frame,
    );
    expect(path).toBe('M50,10C250,10 450,410 650,410');
  });

  it('asks for two knots', () => {
    expect(() => bezierPath([{ flow: 0, pressure: 1, slope: 0 }], frame)).toThrow('two knots');
  });
});
