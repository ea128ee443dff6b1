import { describe, expect, it } from 'vitest';
import { frameWork, type TraceEvent } from '../../bench/trace-frames.ts';

const event = (name: string, ts: number, dur: number, tid = 1): TraceEvent => ({
  name,
  ph: 'X',
  pid: 1,
  tid,
  ts,
  dur,
  tdur: dur,
});

describe('the work of frames', () => {
  it('counts what lies within another event once, for the inner one, and drops cut frames', () => {
    const frame = (at: number) => [
      event('FireAnimationFrame', at, 4000),
      event('FunctionCall', at + 100, 3000),
      event('Layout', at + 200, 1000),
      event('Paint', at + 5000, 2000),
      event('Layerize', at + 7000, 500),
    ];
    const [work, ...rest] = frameWork([...frame(0), ...frame(16000), ...frame(32000)]);
    expect(work).toEqual({ script: 3, layout: 1, paint: 2.5 });
    expect(rest).toHaveLength(1);
  });

  it('looks at the thread that draws the most', () => {
    const idle = [event('FunctionCall', 10, 9000, 2), event('Layerize', 20000, 1, 2)];
    const busy = [0, 1, 2, 3].flatMap((i) => [
      event('FunctionCall', 16000 * i, 1000),
      event('Layerize', 16000 * i + 2000, 0),
    ]);
    expect(frameWork([...idle, ...busy]).map(({ script }) => script)).toEqual([1, 1, 1]);
  });

  it('refuses a trace without frames', () => {
    expect(() => frameWork([event('FunctionCall', 0, 1)])).toThrow(/Layerize/);
  });
});
