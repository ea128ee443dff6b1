import { describe, expect, it } from 'vitest';
import {
  keptStop,
  nearestStop,
  type ReadLine,
  spokenReading,
  stepAcross,
  stepAlong,
} from '../../../src/plot/reading.ts';

const line = (name: string, y: number, xs: readonly number[], remark?: string): ReadLine => ({
  name,
  places: xs.map((x) => ({ x, y })),
  read: (stop) => ({ figures: [`${xs[stop]} cfm`, `${y} Pa`], remark }),
});
const lines = [line('collector', 10, [0, 10, 20, 30]), line('ducts', 50, [5, 25], 'continued')];

describe('reading along lines', () => {
  it('finds the stop nearest to the pointer, on whichever line', () => {
    expect(nearestStop(lines, { x: 18, y: 12 })).toEqual({ line: 0, stop: 2 });
    expect(nearestStop(lines, { x: 18, y: 45 })).toEqual({ line: 1, stop: 1 });
    expect(nearestStop([], { x: 0, y: 0 })).toBeUndefined();
  });

  it('steps along a line and stays at its ends', () => {
    expect(stepAlong(lines, { line: 0, stop: 1 }, 1)).toEqual({ line: 0, stop: 2 });
    expect(stepAlong(lines, { line: 0, stop: 1 }, 10)).toEqual({ line: 0, stop: 3 });
    expect(stepAlong(lines, { line: 0, stop: 1 }, Number.NEGATIVE_INFINITY)?.stop).toBe(0);
    expect(stepAlong(lines, { line: 0, stop: 1 }, Number.POSITIVE_INFINITY)?.stop).toBe(3);
  });

  it('steps over to the stop above or below, and no further than the last line', () => {
    expect(stepAcross(lines, { line: 0, stop: 3 }, 1)).toEqual({ line: 1, stop: 1 });
    expect(stepAcross(lines, { line: 1, stop: 0 }, -1)).toEqual({ line: 0, stop: 0 });
    expect(stepAcross(lines, { line: 1, stop: 0 }, 1)).toEqual({ line: 1, stop: 0 });
  });

  it('stays as near as it can when lines become shorter or fewer', () => {
    expect(keptStop(lines, { line: 1, stop: 9 })).toEqual({ line: 1, stop: 1 });
    expect(keptStop(lines.slice(0, 1), { line: 1, stop: 1 })).toEqual({ line: 0, stop: 1 });
    expect(keptStop([], { line: 0, stop: 0 })).toBeUndefined();
  });

  it('speaks name, figures and remark', () => {
    expect(spokenReading(lines[0]!, 1)).toBe('collector: 10 cfm, 10 Pa');
    expect(spokenReading(lines[1]!, 1)).toBe('ducts: 25 cfm, 50 Pa, continued');
  });
});
