import { describe, expect, it } from 'vitest';
import { suctionPath, type WayPart } from '../../../src/plot/suction-path.ts';

const part = (comes: WayPart['comes'], total: number, fixed: number): WayPart => ({
  comes,
  part: 0,
  total,
  static: fixed,
});
const way = [part('at once', 200, 300), part('gradually', 600, 700), part('at once', 500, 900)];
const frame = { left: 100, right: 300, top: 40, heights: [20, 40, 20], end: 1000 };

describe('the way of the suction', () => {
  const path = suctionPath(way, frame, 'metric');

  it('goes down a row for each part, and to the right as suction grows', () => {
    expect(path.rows.map(({ top, bottom }) => [top, bottom])).toEqual([
      [40, 60],
      [60, 100],
      [100, 120],
    ]);
    expect(path.rows.map(({ total }) => total.x)).toEqual([140, 220, 200]);
    expect(path.rows.map((row) => row.static.x)).toEqual([160, 240, 280]);
  });

  it('begins in the room, steps at one place and slopes along a length', () => {
    expect(path.total).toBe('M100,40L100,50L140,50L140,60L220,100L220,110L200,110L200,120');
    expect(path.rows.map(({ stroke }) => stroke)).toEqual([
      'M100,50L140,50',
      'M140,60L220,100',
      'M220,110L200,110',
    ]);
  });

  it('closes the stretch between the lines', () => {
    expect(path.between).toMatch(/^M100,40.*L280,120.*L100,40Z$/);
  });

  it('has an axis from no suction to its end, with ticks on it', () => {
    expect(path.axis.ticks[0]?.value).toBe(0);
    expect(path.axis.ticks.every(({ value }) => path.x(value) <= 300.05)).toBe(true);
  });

  it('refuses heights that are not its parts’', () => {
    expect(() => suctionPath(way, { ...frame, heights: [20] }, 'us')).toThrow(RangeError);
  });
});
