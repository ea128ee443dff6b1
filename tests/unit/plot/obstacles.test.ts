import { describe, expect, it } from 'vitest';
import { isFree, strokesAlong } from '../../../src/plot/obstacles.ts';
import { plotFrame } from '../../../src/plot/frame.ts';

const box = { left: 10, top: 10, right: 20, bottom: 20 };
const isFreeOf = (x1: number, y1: number, x2: number, y2: number) =>
  isFree(box, { strokes: [{ from: { x: x1, y: y1 }, to: { x: x2, y: y2 } }], boxes: [] });

describe('a box', () => {
  it('is not free of a stroke that crosses it, ends in it or lies in it', () => {
    expect(isFreeOf(0, 15, 30, 15)).toBe(false);
    expect(isFreeOf(15, 0, 15, 30)).toBe(false);
    expect(isFreeOf(0, 0, 15, 15)).toBe(false);
    expect(isFreeOf(12, 12, 18, 13)).toBe(false);
  });

  it('is free of one that passes by, also where their bounds overlap', () => {
    expect(isFreeOf(0, 5, 30, 5)).toBe(true);
    expect(isFreeOf(0, 19, 11, 40)).toBe(true);
    expect(isFreeOf(15, 22, 15, 30)).toBe(true);
  });

  it('is free of another box that only touches it', () => {
    const beside = { left: 20, top: 10, right: 30, bottom: 20 };
    expect(isFree(box, { strokes: [], boxes: [beside] })).toBe(true);
    expect(isFree(box, { strokes: [], boxes: [{ ...beside, left: 19.5 }] })).toBe(false);
  });
});

describe('the strokes along a curve', () => {
  const frame = plotFrame({ left: 0, top: 0, right: 100, bottom: 100 }, 1, 1);

  it('follow its cubic pieces end to end', () => {
    // The cubic with ends 0 and 1 and level slopes is 3t² − 2t³.
    const strokes = strokesAlong(
      [
        { flow: 0, pressure: 0, slope: 0 },
        { flow: 1, pressure: 1, slope: 0 },
      ],
      frame,
    );
    expect(strokes[0]?.from).toEqual({ x: 0, y: 100 });
    expect(strokes.at(-1)?.to).toEqual({ x: 100, y: 0 });
    for (const { from } of strokes) {
      const t = from.x / 100;
      expect(100 - from.y).toBeCloseTo(100 * (3 * t ** 2 - 2 * t ** 3), 9);
    }
  });
});
