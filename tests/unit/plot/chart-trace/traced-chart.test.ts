import { describe, expect, it } from 'vitest';
import { nextStep } from '../../../../src/plot/chart-trace/trace-words.ts';
import { faultWords, valueProblem } from '../../../../src/plot/chart-trace/fault-words.ts';
import {
  AXIS_MARKS,
  nextMark,
  nextValue,
  placeOf,
  type TracedChart,
  UNTRACED,
} from '../../../../src/plot/chart-trace/traced-chart.ts';
import {
  withoutPoint,
  withPlace,
  withScale,
  withUnit,
  withValue,
} from '../../../../src/plot/chart-trace/traced-steps.ts';
import { faultOf, tracedValues } from '../../../../src/plot/chart-trace/traced-values.ts';

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

  it('says which unit is meant when it asks for a value', () => {
    const placed = withPlace(UNTRACED, AXIS_MARKS[0]!, PLACES[0]!);
    expect(nextStep(placed, 'us')).toMatch(/first mark of the flow axis, in cfm\.$/);
    expect(nextStep(withUnit(placed, 'flow', 'litrePerSecond', 'us'), 'us')).toMatch(/in L\/s\.$/);
  });

  it('reads nothing until all marks have a value', () => {
    const point = withPlace(marked, { kind: 'point', index: 0 }, { x: 300, y: 200 });
    expect(tracedValues(point)).toEqual([{ flow: 0.5, pressure: 1000 }]);
    expect(tracedValues(withValue(point, AXIS_MARKS[2]!, undefined))).toEqual([]);
    expect(tracedValues(withScale(point, 'flow', 'logarithmic'))).toEqual([]);
  });

  it('keeps the numbers of an axis where its unit is another', () => {
    const once = withUnit(marked, 'pressure', 'inchOfWater', 'metric');
    expect(once.axes.pressure.marks[1].value).toBeCloseTo(2000 * 249.08891, 6);
    const twice = withUnit(once, 'pressure', 'kilopascal', 'metric');
    expect(twice.axes.pressure.marks.map(({ value }) => value)).toEqual([0, 2_000_000]);
    expect(twice.axes.flow).toBe(marked.axes.flow);
  });

  it('moves a point, takes it out, and leaves the chart before as it was', () => {
    const point = { kind: 'point', index: 0 } as const;
    const first = withPlace(marked, point, { x: 300, y: 200 });
    const moved = withPlace(first, point, { x: 200, y: 200 });
    expect(placeOf(first, point)).toEqual({ x: 300, y: 200 });
    expect(moved.points).toEqual([{ x: 200, y: 200 }]);
    expect(withoutPoint(moved, 0).points).toEqual([]);
  });

  it('takes a point that slipped over an axis for 0, and asks about one further out', () => {
    const at = (x: number, y: number) => withPlace(marked, { kind: 'point', index: 0 }, { x, y });
    expect(tracedValues(at(98, 20))[0]!.flow).toBe(0);
    expect(tracedValues(at(200, 402))[0]!.pressure).toBe(0);
    expect(tracedValues(at(80, 20))[0]!.flow).toBeCloseTo(-0.05, 12);
    expect(nextStep(at(80, 20), 'us')).toMatch(/^Point 1 lies at a flow below 0/);
    expect(nextStep(at(200, 410), 'us')).toMatch(/^Point 1 lies at a pressure below 0/);
  });
});

describe('marks that can’t be right', () => {
  it('are told as soon as they are set, before the other axis is marked', () => {
    const first = withPlace(UNTRACED, AXIS_MARKS[0]!, PLACES[0]!);
    const near = withPlace(first, AXIS_MARKS[1]!, { x: 103, y: 404 });
    expect(faultOf(near)).toEqual({ kind: 'too near', axis: 'flow', apart: 5 });
    expect(nextStep(near, 'us')).toMatch(/nearly the same place, 5 pixels apart\. Move one/);
    const zero = withScale(withValue(first, AXIS_MARKS[0]!, 0), 'flow', 'logarithmic');
    expect(faultOf(zero)).toEqual({ kind: 'not above zero', axis: 'flow', index: 0 });
  });

  it('are told at the field, with the value as it was typed and what would do', () => {
    const zero = withScale(marked, 'flow', 'logarithmic').axes.flow;
    expect(valueProblem('flow', zero, 0, 'us')).toMatch(
      /^0\u2009cfm has no place on a logarithmic/,
    );
    expect(valueProblem('flow', zero, 1, 'us')).toBe('');
    const twice = withValue(marked, AXIS_MARKS[2]!, 2000);
    const inKilopascal = withUnit(twice, 'pressure', 'kilopascal', 'metric').axes.pressure;
    expect(valueProblem('pressure', inKilopascal, 0, 'us')).toBe('');
    expect(valueProblem('pressure', inKilopascal, 1, 'us')).toMatch(
      /^2000\u2009kPa is what the first mark stands for already/,
    );
    expect(valueProblem('pressure', marked.axes.pressure, 1, 'us')).toBe('');
  });

  it('are told when the axes run the same way', () => {
    const flat = withPlace(marked, AXIS_MARKS[3]!, { x: 400, y: 405 });
    expect(faultOf(flat)).toEqual({ kind: 'parallel' });
    expect(faultWords({ kind: 'parallel' })).toMatch(/two along the pressure axis/);
  });
});
