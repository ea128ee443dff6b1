// A label never covers a line or a mark, wherever they lie.
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box } from '../../../src/plot/frame.ts';
import type { Obstacles, Stroke } from '../../../src/plot/obstacles.ts';
import { placeAnywhere, placeLabel } from '../../../src/plot/place-label.ts';

const page: Box = { left: 0, top: 0, right: 500, bottom: 400 };
const size = { width: 110, height: 50 };
const nothing: Obstacles = { strokes: [], boxes: [] };
const place = fc.record({
  x: fc.integer({ min: 0, max: 500 }),
  y: fc.integer({ min: 0, max: 400 }),
});
const stroke: fc.Arbitrary<Stroke> = fc.record({ from: place, to: place });

const pointsAlong = ({ from, to }: Stroke) =>
  Array.from({ length: 400 }, (_, i) => ({
    x: from.x + ((to.x - from.x) * i) / 399,
    y: from.y + ((to.y - from.y) * i) / 399,
  }));
const holds = (box: Box, { x, y }: { x: number; y: number }) =>
  x > box.left && x < box.right && y > box.top && y < box.bottom;

describe('a label’s place', () => {
  it('is up and to the right of its mark where nothing is in the way', () => {
    const placed = placeLabel({ x: 200, y: 200 }, size, page, nothing);
    expect(placed?.box.left).toBeGreaterThan(200);
    expect(placed?.box.bottom).toBeLessThan(200);
  });

  it('lies on the page and touches no stroke, for any strokes', () => {
    fc.assert(
      fc.property(place, fc.array(stroke, { maxLength: 6 }), (mark, strokes) => {
        const box = placeLabel(mark, size, page, { strokes, boxes: [] })?.box;
        if (!box) return;
        expect(box.left).toBeGreaterThanOrEqual(0);
        expect(box.right).toBeLessThanOrEqual(500);
        expect(box.top).toBeGreaterThanOrEqual(0);
        expect(box.bottom).toBeLessThanOrEqual(400);
        expect(strokes.flatMap(pointsAlong).filter((point) => holds(box, point))).toEqual([]);
      }),
      { seed: 7, numRuns: 300 },
    );
  });

  it('stays where it was while that is free, and moves when it isn’t', () => {
    const last = { direction: Math.PI / 2, distance: 28 };
    const kept = placeLabel({ x: 200, y: 200 }, size, page, nothing, { last });
    expect(kept?.spot).toEqual(last);
    const inTheWay = [{ left: 150, top: 210, right: 250, bottom: 300 }];
    const moved = placeLabel(
      { x: 200, y: 200 },
      size,
      page,
      { strokes: [], boxes: inTheWay },
      { last },
    );
    expect(moved?.spot).not.toEqual(last);
  });

  it('is none where the whole neighbourhood is taken, but then may be anywhere', () => {
    const taken = { strokes: [], boxes: [{ left: 0, top: 0, right: 500, bottom: 300 }] };
    expect(placeLabel({ x: 250, y: 20 }, size, page, taken)).toBeUndefined();
    const anywhere = placeAnywhere({ x: 250, y: 20 }, size, page, taken);
    expect(anywhere?.top).toBeGreaterThanOrEqual(300);
    expect(anywhere?.left).toBeCloseTo(195, -1);
    const full = { strokes: [], boxes: [page] };
    expect(placeAnywhere({ x: 250, y: 20 }, size, page, full)).toBeUndefined();
  });
});
