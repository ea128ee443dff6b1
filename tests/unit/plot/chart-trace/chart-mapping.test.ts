import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type AxisName,
  type AxisScale,
  type ChartAxis,
  chartMapping,
  LEAST_APART,
  pixelWorth,
} from '../../../../src/plot/chart-trace/chart-mapping.ts';
import { drawnChart, type DrawnChart } from '../../../setup/drawn-chart.ts';

const marked = (chart: DrawnChart, axis: AxisName, low: number, high: number): ChartAxis => {
  const place = (value: number) =>
    axis === 'flow'
      ? chart.place({ flow: value, pressure: chart.pressure.from })
      : chart.place({ flow: chart.flow.from, pressure: value });
  return {
    scale: chart[axis].scale,
    marks: [
      { place: place(low), value: low },
      { place: place(high), value: high },
    ],
  };
};

const scales: AxisScale[] = ['linear', 'logarithmic'];

describe('a chart read off its picture', () => {
  it.each(
    scales.flatMap((flow) =>
      scales.flatMap((pressure) => [-20, 0, 3.7, 45, 90].map((turn) => ({ flow, pressure, turn }))),
    ),
  )('gives the values back: flow $flow, pressure $pressure, turned by $turn°', (how) => {
    const chart = drawnChart({ ...how, skew: 7 });
    const mapping = chartMapping({
      flow: marked(chart, 'flow', 0.1, 0.6),
      pressure: marked(chart, 'pressure', 250, 2000),
    });
    expect(mapping.kind).toBe('ready');
    if (mapping.kind !== 'ready') return;
    for (const value of [
      { flow: 0.07, pressure: 2400 },
      { flow: 0.33, pressure: 1111 },
      { flow: 0.74, pressure: 130 },
    ]) {
      const read = mapping.read(chart.place(value));
      expect(read.flow).toBeCloseTo(value.flow, 10);
      expect(read.pressure).toBeCloseTo(value.pressure, 6);
    }
  });

  it('reads every skewed chart, wherever on it the marks lie', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -180, max: 180, noNaN: true }),
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: 0.06, max: 0.3, noNaN: true }),
        fc.double({ min: 0.4, max: 0.75, noNaN: true }),
        fc.double({ min: 0.05, max: 0.8, noNaN: true }),
        fc.double({ min: 100, max: 2500, noNaN: true }),
        (turn, skew, low, high, flow, pressure) => {
          const chart = drawnChart({ flow: 'linear', pressure: 'logarithmic', turn, skew });
          const mapping = chartMapping({
            flow: marked(chart, 'flow', low, high),
            pressure: marked(chart, 'pressure', 200, 900),
          });
          if (mapping.kind !== 'ready') throw new Error(mapping.kind);
          const read = mapping.read(chart.place({ flow, pressure }));
          expect(Math.abs(read.flow - flow)).toBeLessThan(1e-9);
          expect(Math.abs(read.pressure / pressure - 1)).toBeLessThan(1e-9);
        },
      ),
    );
  });
});

describe('what a pixel is worth', () => {
  it('is the same all over evenly spaced axes, and a part of the value on logarithmic ones', () => {
    const chart = drawnChart({ flow: 'linear', pressure: 'logarithmic', turn: 30, skew: 0 });
    const mapping = chartMapping({
      flow: marked(chart, 'flow', 0.1, 0.6),
      pressure: marked(chart, 'pressure', 250, 2000),
    });
    if (mapping.kind !== 'ready') throw new Error(mapping.kind);
    // The paper is 560 px wide for 0.75 m³/s and 380 px high for a factor of 25.
    for (const pressure of [150, 2300]) {
      const worth = pixelWorth(mapping.read, chart.place({ flow: 0.4, pressure }));
      expect(worth.flow).toBeCloseTo(0.75 / 560, 9);
      expect(worth.pressure / pressure).toBeCloseTo(Math.log(25) / 380, 4);
    }
  });
});

describe('marks that fix no chart', () => {
  const axis = (x: number, y: number, low = 1, high = 2): ChartAxis => ({
    scale: 'linear',
    marks: [
      { place: { x: 10, y: 10 }, value: low },
      { place: { x: 10 + x, y: 10 + y }, value: high },
    ],
  });

  it('says so where both marks of an axis lie together', () => {
    const near = axis(LEAST_APART / 2, 0);
    expect(chartMapping({ flow: near, pressure: axis(0, 90) })).toEqual({
      kind: 'too near',
      axis: 'flow',
      apart: LEAST_APART / 2,
    });
    expect(chartMapping({ flow: axis(90, 0), pressure: near })).toEqual({
      kind: 'too near',
      axis: 'pressure',
      apart: LEAST_APART / 2,
    });
  });

  it('says so where both stand for the same', () => {
    expect(chartMapping({ flow: axis(90, 0, 3, 3), pressure: axis(0, 90) })).toEqual({
      kind: 'same value',
      axis: 'flow',
    });
  });

  it('says so where a logarithmic axis is to have a zero', () => {
    const pressure = { ...axis(0, 90, 0, 5), scale: 'logarithmic' } as const;
    expect(chartMapping({ flow: axis(90, 0), pressure })).toEqual({
      kind: 'not above zero',
      axis: 'pressure',
      index: 0,
    });
  });

  it('says so where the axes run the same way', () => {
    expect(chartMapping({ flow: axis(90, 0), pressure: axis(90, 4) }).kind).toBe('parallel');
    expect(chartMapping({ flow: axis(90, 0), pressure: axis(-90, 4) }).kind).toBe('parallel');
  });
});
