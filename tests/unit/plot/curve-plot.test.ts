import { describe, expect, it } from 'vitest';
import { availableSuction, collectorCurve } from '../../../src/curve/collector-curve.ts';
import { enteredSpline } from '../../../src/curve/entered-spline.ts';
import type { Basis } from '../../../src/curve/curve-data.ts';
import { valueAt } from '../../../src/math/hermite.ts';
import { curvePlot, curveRule, movedPoint } from '../../../src/plot/curve-plot.ts';
import type { Place } from '../../../src/plot/frame.ts';
import { curveReading, curveTable } from '../../../src/plot/curve-reading.ts';

const POINTS = [
  { flow: 0.1, pressure: 2000 },
  { flow: 0.2, pressure: 1800 },
  { flow: 0.3, pressure: 1900, aside: true },
  { flow: 0.4, pressure: 1000 },
] as const;
const AIR = { density: 1.2, viscosity: 1.81e-5, pressure: 101_325 };
const SIZE = { width: 400, height: 300 };
const NUMBER = { size: () => ({ width: 90, height: 16 }) };

/** Each curve at each width with each flow. */
function every<A, B, C>(a: readonly A[], b: readonly B[], c: readonly C[]): [A, B, C][] {
  return a.flatMap((x) => b.flatMap((y) => c.map((z): [A, B, C] => [x, y, z])));
}

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
    const parts = curvePlot(curve, curveRule(curve, 'metric', SIZE), NUMBER);
    expect(parts.marks.map(({ isAside }) => isAside)).toEqual([false, false, true, false]);
    expect(parts.unknown).toHaveLength(2);
    const { frame } = curveRule(curve, 'metric', SIZE);
    expect(parts.marks[3]!.x).toBeCloseTo(frame.x(0.4), 9);
    expect(parts.marks[3]!.y).toBeCloseTo(frame.y(1000), 9);
  });

  it('draws one line where nothing is taken off, and else two with the gap between', () => {
    const total = plotted({ kind: 'total' });
    expect(curvePlot(total, curveRule(total, 'metric', SIZE), NUMBER)).toMatchObject({
      available: '',
    });
    const tap = plotted({ kind: 'tap', diameter: 0.15 });
    const { available, gap, labels } = curvePlot(tap, curveRule(tap, 'metric', SIZE), NUMBER);
    expect(available).toMatch(/^M/);
    // ½·1.2·(0.25 / (π/4·0.15²))² = 120.08 Pa, by hand.
    expect(gap!.difference).toBeCloseTo(120.08, 2);
    expect(labels!.entered.y).toBeLessThan(labels!.available.y);
  });

  it('writes the number of the gap where no line and no mark goes through it', () => {
    const curves = [0.08, 0.1, 0.12, 0.15, 0.2].map((diameter) =>
      plotted({ kind: 'tap', diameter }),
    );
    let written = 0;
    for (const [curve, width, flow] of every(
      curves,
      [280, 330, 400, 520, 680, 900],
      [0.06, 0.12, 0.18, 0.25, 0.32, 0.39],
    )) {
      const suction = availableSuction(curve.available, flow);
      const rule = curveRule(curve, 'metric', { width, height: 260 });
      const { frame } = rule;
      const { marks, gap } = curvePlot({ ...curve, point: { flow, suction } }, rule, NUMBER);
      const { number } = gap!;
      if (!number) continue;
      written += 1;
      expect(number.left).toBeGreaterThanOrEqual(frame.inner.left);
      expect(number.right).toBeLessThanOrEqual(frame.inner.right);
      const isIn = ({ x, y }: Place) =>
        x > number.left && x < number.right && y > number.top && y < number.bottom;
      for (let x = number.left; x <= number.right; x += 2) {
        const there =
          (frame.flowEnd * (x - frame.inner.left)) / (frame.inner.right - frame.inner.left);
        const lines = [valueAt(curve.entered, there), availableSuction(curve.available, there)];
        expect(lines.some((pressure) => isIn({ x, y: frame.y(pressure) }))).toBe(false);
      }
      expect(marks.some(isIn)).toBe(false);
    }
    expect(written).toBe(5 * 6 * 6);
  });

  it('keeps the number of the gap where it stood, as long as that is free', () => {
    const curve = plotted({ kind: 'tap', diameter: 0.1 });
    const rule = curveRule(curve, 'metric', SIZE);
    const { spot } = curvePlot(curve, rule, NUMBER).gap!;
    const moved = { ...curve, point: { flow: 0.251, suction: 990 } };
    const { gap } = curvePlot(moved, rule, { ...NUMBER, last: spot });
    expect(gap!.spot).toBe(spot);
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
