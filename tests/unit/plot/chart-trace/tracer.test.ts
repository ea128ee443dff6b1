import { describe, expect, it } from 'vitest';
import { Tracer } from '../../../../src/plot/chart-trace/tracer.ts';

const at = (x: number, y: number) => ({ x, y });
const point = (index: number) => ({ kind: 'point', index }) as const;

function marked(): Tracer<string> {
  const tracer = new Tracer('leaflet');
  for (const place of [at(0, 100), at(100, 100), at(0, 100), at(0, 0)]) tracer.set(place);
  return tracer;
}

describe('tracing step by step', () => {
  it('holds what was set last, and sets points once the axes are marked', () => {
    const tracer = new Tracer('leaflet');
    tracer.set(at(0, 100));
    expect(tracer.held).toEqual({ kind: 'axis', axis: 'flow', index: 0 });
    const whole = marked();
    whole.set(at(50, 50));
    expect(whole.held).toEqual(point(0));
    expect(whole.chart.points).toEqual([at(50, 50)]);
  });

  it('takes a run of moves back as one step, and the next run by itself', () => {
    const tracer = marked();
    tracer.set(at(50, 50));
    for (const x of [51, 52, 53]) tracer.move(point(0), at(x, 50));
    tracer.rest();
    for (const x of [54, 55]) tracer.move(point(0), at(x, 50));
    tracer.undo();
    expect(tracer.chart.points).toEqual([at(53, 50)]);
    tracer.undo();
    expect(tracer.chart.points).toEqual([at(50, 50)]);
    tracer.undo();
    expect(tracer.chart.points).toEqual([]);
  });

  it('counts no step where a mark was pressed and not moved', () => {
    const tracer = marked();
    tracer.set(at(50, 50));
    tracer.hold(point(0));
    tracer.move(point(0), at(50, 50));
    tracer.undo();
    expect(tracer.chart.points).toEqual([]);
  });

  it('lets go of a mark that is gone, and brings a removed point back where it was', () => {
    const tracer = marked();
    tracer.set(at(10, 90));
    tracer.set(at(20, 80));
    tracer.removePoint(0);
    expect(tracer.chart.points).toEqual([at(20, 80)]);
    tracer.undo();
    expect(tracer.chart.points).toEqual([at(10, 90), at(20, 80)]);
    tracer.hold(point(1));
    tracer.undo();
    expect(tracer.held).toBeUndefined();
  });

  it('begins anew on another picture, and brings the one before back with its marks', () => {
    const tracer = marked();
    tracer.setValue({ kind: 'axis', axis: 'flow', index: 1 }, 0.5);
    tracer.open('another leaflet');
    expect(tracer.held).toBeUndefined();
    expect(tracer.chart.axes.flow.marks[1].place).toBeUndefined();
    tracer.undo();
    expect(tracer.picture).toBe('leaflet');
    expect(tracer.chart.axes.flow.marks[1]).toEqual({ place: at(100, 100), value: 0.5 });
  });

  it('has nothing to take back before the first step', () => {
    const tracer = new Tracer('leaflet');
    expect(tracer.canUndo).toBe(false);
    tracer.setUnit('flow', 'litrePerSecond', 'us');
    tracer.setScale('flow', 'logarithmic');
    expect(tracer.chart.axes.flow).toMatchObject({ unit: 'litrePerSecond', scale: 'logarithmic' });
    expect(tracer.canUndo).toBe(true);
  });
});
