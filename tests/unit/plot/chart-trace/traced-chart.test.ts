import { describe, expect, it } from 'vitest';
import {
  AXIS_MARKS,
  nextMark,
  nextValue,
  placeOf,
  type TracedChart,
  tracedValues,
  UNTRACED,
  withoutPoint,
  withPlace,
  withScale,
  withValue,
} from '../../../../src/plot/chart-trace/traced-chart.ts';
import { nextStep } from '../../../../src/plot/chart-trace/trace-words.ts';

/** A chart of 0 to 1 m³/s over 100 to 500 px, and 0 to 2000 Pa over 400 to 0 px. */
const PLACES = [
  { x: 100, y: 400 },
  { x: 500, y: 400 },
  { x: 100, y: 400 },
  { x: 100, y: 0 },
];
const VALUES = [0, 1, 0, 2000];

const marked = AXIS_MARKS.reduce<TracedChart>(
  (chart, mark, i) => withValue(withPlace(chart, mark, PLACES[i]!), mark, VALUES[i]),
  UNTRACED,
);

describe('a chart that is being traced', () => {
  it('asks for four marks in turn, for the value of each, and then for points', () => {
    let chart = UNTRACED;
    for (const [i, mark] of AXIS_MARKS.entries()) {
      expect(nextMark(chart)).toEqual(mark);
      chart = withPlace(chart, mark, PLACES[i]!);
      expect(nextValue(chart)).toEqual(mark);
      chart = withValue(chart, mark, VALUES[i]);
      expect(nextValue(chart)).toBeUndefined();
    }
    expect(nextMark(chart)).toEqual({ kind: 'point', index: 0 });
  });

  it('reads nothing until all marks have a value', () => {
    const point = withPlace(marked, { kind: 'point', index: 0 }, { x: 300, y: 200 });
    expect(tracedValues(point)).toEqual([{ flow: 0.5, pressure: 1000 }]);
    expect(tracedValues(withValue(point, AXIS_MARKS[2]!, undefined))).toEqual([]);
    expect(tracedValues(withScale(point, 'flow', 'logarithmic'))).toEqual([]);
  });

  it('moves a point, takes it out, and leaves the chart before as it was', () => {
    const point = { kind: 'point', index: 0 } as const;
    const first = withPlace(marked, point, { x: 300, y: 200 });
    const moved = withPlace(first, point, { x: 200, y: 200 });
    expect(placeOf(first, point)).toEqual({ x: 300, y: 200 });
    expect(moved.points).toEqual([{ x: 200, y: 200 }]);
    expect(withoutPoint(moved, 0).points).toEqual([]);
  });

  it('takes a point that slipped over the axis for no flow, and asks about one further out', () => {
    const slipped = withPlace(marked, { kind: 'point', index: 0 }, { x: 98, y: 20 });
    expect(tracedValues(slipped)[0]!.flow).toBe(0);
    const astray = withPlace(marked, { kind: 'point', index: 0 }, { x: 80, y: 20 });
    expect(tracedValues(astray)[0]!.flow).toBeCloseTo(-0.05, 12);
    expect(nextStep(astray)).toMatch(/^Point 1 lies at a flow below 0/);
  });
});
