// The lines of the operating-point plot read out and as a table.
import { describe, expect, it } from 'vitest';
import { availableSuction } from '../../../src/curve/collector-curve.ts';
import { movingPlot } from '../../../src/plot/moving-plot.ts';
import { isFree } from '../../../src/plot/obstacles.ts';
import { asking, curveRemark, given, roundFlows } from '../../../src/plot/operating-lines.ts';
import { operatingReading } from '../../../src/plot/operating-reading.ts';
import { operatingTable } from '../../../src/plot/operating-table.ts';
import { ruledPlot } from '../../../src/plot/ruled-plot.ts';
import { fromDisplay, toDisplay } from '../../../src/units/quantity.ts';
import { sampleCurve } from './sample-curve.ts';

const loss = 9000;
const system = Array.from({ length: 9 }, (_, i) => 0.06 * i).map((flow) => ({
  flow,
  pressure: loss * flow ** 2,
  slope: 2 * loss * flow,
}));
const point = { flow: 0.37, suction: loss * 0.37 ** 2 };
const lines = { curve: sampleCurve, collector: 'cyclone', system, point };

describe('round flows', () => {
  it('are round in the chosen units, with the point among them', () => {
    for (const units of ['us', 'metric'] as const) {
      const flows = roundFlows(units, 0.6, 12, point);
      expect(flows).toContain(point.flow);
      expect(flows).toEqual(flows.toSorted((a, b) => a - b));
      for (const flow of flows.filter((each) => each !== point.flow)) {
        const shown = toDisplay('flow', units, flow);
        expect(Math.abs(shown / 50 - Math.round(shown / 50)), `${shown}`).toBeLessThan(1e-9);
      }
    }
  });
});

describe('the lines by value', () => {
  it('follow the collector, and the ducts as far as they were solved', () => {
    expect(given(lines, 0.2)).toBe(availableSuction(sampleCurve, 0.2));
    // Between knots a parabola is one cubic, so nothing but rounding is lost.
    expect(asking(lines)(0.1)).toBeCloseTo(loss * 0.1 ** 2, 9);
    expect(asking(lines)(0.49)).toBeUndefined();
    expect(asking({ ...lines, system: [] })(0.1)).toBeUndefined();
  });

  it('say where the curve is only continued, and where it rises', () => {
    const { x } = sampleCurve.spline;
    const last = sampleCurve.flowScale * x[x.length - 1]!;
    expect(curveRemark(lines, 1.01 * last)).toMatch(/beyond the entered points/);
    expect(curveRemark(lines, 0.9 * last)).toBeUndefined();
  });
});

describe('reading the plot', () => {
  const ruled = ruledPlot(sampleCurve, 'us', { width: 640, height: 400 });
  const none = { width: 1, height: 1 };
  const labels = () => ({
    point: { width: 90, height: 50 },
    collector: none,
    system: none,
    trail: [],
  });
  const moving = movingPlot(ruled, { system, point, others: [], trail: [], labels });
  const readable = operatingReading(ruled, moving, lines, 'us');

  it('begins at the operating point and says that the lines meet there', () => {
    const { line, stop } = readable.start!;
    const { x, y } = readable.lines[line]!.places[stop]!;
    expect(x).toBeCloseTo(ruled.frame.x(point.flow), 6);
    expect(readable.lines[line]!.read(stop).remark).toMatch(/here they meet/);
    expect(y).toBeCloseTo(ruled.frame.y(availableSuction(sampleCurve, point.flow)), 6);
  });

  it('stays on the lines and inside the frame', () => {
    for (const { places } of readable.lines) {
      expect(places.length).toBeGreaterThan(20);
      for (const { x, y } of places) {
        expect(x).toBeGreaterThanOrEqual(ruled.frame.inner.left);
        expect(x).toBeLessThanOrEqual(ruled.frame.inner.right + 1e-9);
        expect(y).toBeGreaterThanOrEqual(ruled.frame.inner.top - 1e-9);
      }
    }
  });

  it('keeps its figures off the numbers at the point', () => {
    const numbers = moving.labels.point!;
    expect(isFree(numbers, { strokes: [], boxes: readable.obstacles.boxes })).toBe(false);
  });

  it('reads flow and suction in the chosen units', () => {
    const metric = operatingReading(ruled, moving, lines, 'metric');
    const [flow, suction] = metric.lines[0]!.read(metric.start!.stop).figures;
    expect(flow).toMatch(/m³\/h$/);
    expect(suction).toMatch(/Pa$/);
  });
});

describe('the plot as a table', () => {
  it('has units in its head, a row for the point, and what the lines say in each', () => {
    const { columns, rows } = operatingTable(lines, 0.6, 'us');
    expect(columns.map(({ unit }) => unit)).toEqual(['cfm', 'in. w.g.', 'in. w.g.', undefined]);
    const atPoint = rows.filter(([, , , remark]) => remark?.includes('operating point'));
    expect(atPoint).toHaveLength(1);
    const [flow, , asked] = atPoint[0]!;
    expect(fromDisplay('flow', 'us', Number(flow))).toBeCloseTo(point.flow, 3);
    expect(fromDisplay('pressure', 'us', Number(asked))).toBeCloseTo(point.suction, -1);
    for (const row of rows) expect(row).toHaveLength(columns.length);
  });
});
