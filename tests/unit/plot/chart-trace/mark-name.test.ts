import { describe, expect, it } from 'vitest';
import { alongName, namePlace } from '../../../../src/plot/chart-trace/mark-name.ts';

const PICTURE = { width: 700, height: 500 };
const pressure = { kind: 'axis', axis: 'pressure', index: 1 } as const;
const flow = { kind: 'axis', axis: 'flow', index: 0 } as const;
const point = { kind: 'point', index: 0 } as const;

describe('the name of a mark', () => {
  it('of the pressure axis stands left of it, and above it where the picture ends', () => {
    expect(namePlace(pressure, { x: 140, y: 90 }, PICTURE, 1)).toMatchObject({ anchor: 'end' });
    const above = namePlace(pressure, { x: 80, y: 90 }, PICTURE, 1);
    expect(above.anchor).toBe('start');
    expect(above.place.y).toBeLessThan(80);
    // The same picture at half its size: a name takes twice as many of its pixels.
    expect(namePlace(pressure, { x: 140, y: 90 }, PICTURE, 2)).toMatchObject({ anchor: 'start' });
  });

  it('of the flow axis stands below it, and above it where the picture ends', () => {
    expect(namePlace(flow, { x: 140, y: 400 }, PICTURE, 1).place.y).toBeGreaterThan(410);
    expect(namePlace(flow, { x: 140, y: 480 }, PICTURE, 1).place.y).toBeLessThan(480);
  });

  it('never goes out of the picture', () => {
    for (const mark of [pressure, flow, point]) {
      for (const x of [0, 50, 92, 93, 350, 607, 608, 700]) {
        const [, end] = alongName('pressure 2', namePlace(mark, { x, y: 250 }, PICTURE, 1));
        expect(end!.x).toBeGreaterThanOrEqual(0);
        expect(end!.x).toBeLessThanOrEqual(PICTURE.width);
      }
    }
  });
});
