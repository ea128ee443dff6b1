import { describe, expect, it } from 'vitest';
import { MarkDrag } from '../../../src/ui/chart-trace/mark-drag.ts';

const shown = { mark: { kind: 'point', index: 0 }, place: { x: 100, y: 80 }, name: '1' } as const;
/** The picture is shown at half its size. */
const SCALE = 2;

describe('a pointer on a mark', () => {
  it('means the mark in its middle, and a place beside it further out', () => {
    expect(new MarkDrag(1, shown, { x: 108, y: 80 }).meansMark(SCALE)).toBe(true);
    expect(new MarkDrag(1, shown, { x: 130, y: 80 }).meansMark(SCALE)).toBe(false);
  });

  it('moves nothing until it has gone some way, and then the mark by as much as itself', () => {
    const drag = new MarkDrag(1, shown, { x: 110, y: 90 });
    expect(drag.follow({ x: 114, y: 90 }, SCALE)).toBeUndefined();
    expect(drag.hasMoved).toBe(false);
    expect(drag.follow({ x: 150, y: 70 }, SCALE)).toEqual({ x: 140, y: 60 });
    expect(drag.follow({ x: 111, y: 90 }, SCALE)).toEqual({ x: 101, y: 80 });
    expect(drag.hasMoved).toBe(true);
  });
});
