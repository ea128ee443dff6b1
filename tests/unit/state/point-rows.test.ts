import { describe, expect, it } from 'vitest';
import { judgeRows, type PointRow, sortedRows } from '../../../src/state/point-rows.ts';

const row = (key: number, flow?: number, pressure?: number): PointRow => ({ key, flow, pressure });

describe('rows of points', () => {
  it('make a curve by rising flow, whatever their order; half-filled ones are left out', () => {
    const rows = [row(1, 0.4, 500), row(2, 0, 2000), row(3), row(4, 0.2)];
    expect(judgeRows(rows, 'metric')).toEqual({
      points: [
        { flow: 0, pressure: 2000 },
        { flow: 0.4, pressure: 500 },
      ],
      problems: new Map(),
      doubts: new Map(),
      problem: '',
      halfFilled: 1,
    });
  });

  it('sort with those without a flow last, in the order they had', () => {
    const rows = [row(1), row(2, 0.3), row(3, undefined, 100), row(4, 0.1)];
    expect(sortedRows(rows).map(({ key }) => key)).toEqual([4, 2, 1, 3]);
  });

  it('say at the row which flow stands there twice', () => {
    const judged = judgeRows([row(1, 0, 900), row(2, 0.5, 300), row(3, 0.5, 200)], 'metric');
    expect(judged.points).toBeUndefined();
    expect([...judged.problems.keys()]).toEqual([3]);
    expect(judged.problems.get(3)).toMatch(/^1.800.m³\/h stands here a second time/);
  });

  it('keep points that are set aside, and ask nothing of them', () => {
    const aside = { ...row(3, 0.5, 200), aside: true } as const;
    const judged = judgeRows([row(1, 0, 900), row(2, 0.5, 300), aside], 'metric');
    expect(judged.points).toEqual([
      { flow: 0, pressure: 900 },
      { flow: 0.5, pressure: 300 },
      { flow: 0.5, pressure: 200, aside: true },
    ]);
    expect(judgeRows([row(1, 0, 900), aside], 'metric').problem).toMatch(/Take one back/);
  });

  it('may stand twice at a flow where they are smoothed, but not all at one', () => {
    const rows = [row(1, 0, 900), row(2, 0.5, 300), row(3, 0.5, 200)];
    expect(judgeRows(rows, 'metric', 'smooth').points).toHaveLength(3);
    expect(judgeRows(rows.slice(1), 'metric', 'smooth').problem).toMatch(
      /all points stand at one/i,
    );
  });

  it('ask for two points, and for a pressure above zero', () => {
    expect(judgeRows([row(1, 0, 900)], 'us').problem).toMatch(/two points/);
    expect(judgeRows([row(1, 0, -900), row(2, 1, -100)], 'us').problem).toMatch(/positive number/);
  });
});
