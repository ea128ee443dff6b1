import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loupeCorner } from '../../../../src/plot/chart-trace/loupe-corner.ts';

const WINDOW = { width: 340, height: 240 };
const SIZE = 92;

describe('the corner of the loupe', () => {
  it('is the farthest from what it shows where nothing is marked', () => {
    expect(loupeCorner({ x: 30, y: 20 }, [], WINDOW, SIZE)).toEqual({
      side: 'right',
      edge: 'bottom',
    });
    expect(loupeCorner({ x: 300, y: 220 }, [], WINDOW, SIZE)).toEqual({
      side: 'left',
      edge: 'top',
    });
  });

  it('is another where marks would be hidden', () => {
    const mark = { x: 60, y: 50 };
    expect(loupeCorner({ x: 300, y: 220 }, [mark], WINDOW, SIZE)).not.toEqual({
      side: 'left',
      edge: 'top',
    });
  });

  it('never hides what it shows, whatever is marked', () => {
    const place = fc.record({
      x: fc.double({ min: 0, max: WINDOW.width, noNaN: true }),
      y: fc.double({ min: 0, max: WINDOW.height, noNaN: true }),
    });
    fc.assert(
      fc.property(place, fc.array(place, { maxLength: 20 }), (looked, marks) => {
        const { side, edge } = loupeCorner(looked, marks, WINDOW, SIZE);
        const isBeside = side === 'left' ? looked.x > SIZE : looked.x < WINDOW.width - SIZE;
        const isClear = edge === 'top' ? looked.y > SIZE : looked.y < WINDOW.height - SIZE;
        expect(isBeside || isClear).toBe(true);
      }),
    );
  });
});
