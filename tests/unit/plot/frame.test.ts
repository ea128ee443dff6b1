import { describe, expect, it } from 'vitest';
import { plotFrame } from '../../../src/plot/frame.ts';

describe('a plot’s frame', () => {
  const frame = plotFrame({ left: 40, top: 20, right: 240, bottom: 120 }, 0.5, 2000);

  it('puts the axes’ ends on the frame, with pressure upwards', () => {
    expect([frame.x(0), frame.x(0.5)]).toEqual([40, 240]);
    expect([frame.y(0), frame.y(2000)]).toEqual([120, 20]);
  });

  it('goes on straight outside', () => {
    expect(frame.x(1)).toBe(440);
    expect(frame.y(-2000)).toBe(220);
  });

  it.each([0, -1, Number.NaN])('refuses an axis that ends at %s', (end) => {
    expect(() => plotFrame(frame.inner, end, 1)).toThrow(RangeError);
    expect(() => plotFrame(frame.inner, 1, end)).toThrow(RangeError);
  });
});
