import { describe, expect, it } from 'vitest';
import { availableSuction, collectorCurve } from '../../../src/curve/collector-curve.ts';
import { enteredSpline } from '../../../src/curve/entered-spline.ts';
import type { Basis } from '../../../src/curve/curve-data.ts';
import { valueAt } from '../../../src/math/hermite.ts';
import { curvePlot, curveRule, movedPoint } from '../../../src/plot/curve-plot.ts';
import { curveReading, curveTable } from '../../../src/plot/curve-reading.ts';

const POINTS = [
  { flow: 0.1, pressure: 2000 },
  { flow: 0.2, pressure: 1800 },
  { flow: 0.3, pressure: 1900, aside: true },
  { flow: 0.4, pressure: 1000 },
] as const;
const AIR = { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 };
const SIZE = { width: 400, height: 300 };

function plotted(basis: Basis) {
  const data = {
    basis,
    includes: { filter: true, separator: true },
    density: 1.2,
    points: POINTS,
  };
  const spec = { curve: data, filter: { kind: 'none' }, separator: { kind: 'none' } } as const;
  return {
    points: POINTS,
    entered: enteredSpline(data),
    available: collectorCurve(spec, AIR),
    point: { flow: 0.25, suction: 1000 },
  };
}

describe('the plot of an entered curve', () => {
  it('marks every point, those set aside as such, and draws the rest as unknown', () => {
    const curve = plotted({ kind: 'total' });
    const parts = curvePlot(curve, curveRule(curve, 'metric', SIZE));
    expect(parts.marks.map(({ isAside }) => isAside)).toEqual([false, false, true, false]);
    expect(parts.unknown).toHaveLength(2);
    const { frame } = curveRule(curve, 'metric', SIZE);
    expect(parts.marks[3]!.x).toBeCloseTo(frame.x(0.4), 9);
    expect(parts.marks[3]!.y).toBeCloseTo(frame.y(1000), 9);
  });

  it('draws one line where nothing is taken off, and else two with the gap between', () => {
    const total = plotted({ kind: 'total' });
    expect(curvePlot(total, curveRule(total, 'metric', SIZE))).toMatchObject({ available: '' });
    const tap = plotted({ kind: 'tap', diameter: 0.15 });
    const { available, gap, labels } = curvePlot(tap, curveRule(tap, 'metric', SIZE));
    expect(available).toMatch(/^M/);
    // ½·1.2·(0.25 / (π/4·0.15²))² = 120.08 Pa, by hand.
    expect(gap!.difference).toBeCloseTo(120.08, 2);
    expect(labels!.entered.y).toBeLessThan(labels!.available.y);
  });

  it('writes the number of the gap where no line goes through it, at any width', () => {
    const tap = plotted({ kind: 'tap', diameter: 0.1 });
    for (let width = 280; width <= 900; width += 20) {
      const rule = curveRule(tap, 'metric', { width, height: 260 });
      const { frame } = rule;
      const { number, entered } = curvePlot(tap, rule).gap!;
      const [from, to] =
        number.anchor === 'end' ? [number.x - 90, number.x] : [number.x, number.x + 90];
      expect(from).toBeGreaterThanOrEqual(frame.inner.left);
      expect(to).toBeLessThanOrEqual(frame.inner.right);
      for (let x = from; x <= to; x += 5) {
        const flow =
          (frame.flowEnd * (x - frame.inner.left)) / (frame.inner.right - frame.inner.left);
        const lines = [valueAt(tap.entered, flow), availableSuction(tap.available, flow)];
        for (const y of lines.map((pressure) => frame.y(pressure))) {
          const isClear = y > number.y + 3 || y < number.y - 9;
          expect(
            isClear,
            `${width} px wide, a line at ${x}, ${y}; number at ${number.y}, gap at ${entered.x}`,
          ).toBe(true);
        }
      }
    }
  });

  it('keeps a moved point between its neighbours, in the plot and on a number that is shown', () => {
    const move = (at: number, flow: number, pressure: number) =>
      movedPoint(
        POINTS,
        at,
        { flow, pressure },
        { flow: 0.5, pressure: 2500 },
        { flow: 0.001, pressure: 1 },
      );
    expect(move(1, 0.2503, 1700.4)).toEqual({ flow: 0.25, pressure: 1700 });
    expect(move(1, 0.9, -50)).toEqual({ flow: 0.299, pressure: 0 });
    expect(move(1, 0.02, 9000)).toEqual({ flow: 0.101, pressure: 2500 });
    expect(move(0, -1, 100).flow).toBe(0);
    expect(move(3, 7, 100).flow).toBe(0.5);
    expect(move(2, 0.3, 1500)).toEqual({ flow: 0.3, pressure: 1500, aside: true });
  });

  it('reads both lines, and says where they are only continued', () => {
    const curve = plotted({ kind: 'tap', diameter: 0.15 });
    const rule = curveRule(curve, 'metric', SIZE);
    const { lines } = curveReading(curve, rule, 'metric');
    expect(lines.map(({ name }) => name)).toEqual(['as entered', 'what the ducts get']);
    expect(lines[0]!.read(0).remark).toMatch(/only continued/);
    const table = curveTable(curve, 0.5, 'metric');
    const row = table.rows.find((cells) => cells.at(-1) === 'operating point')!;
    expect(row[0]).toBe('900');
    expect(row[3]).toBe('120');
  });
});
