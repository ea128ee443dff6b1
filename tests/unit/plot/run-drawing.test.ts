import { describe, expect, it } from 'vitest';
import { runDrawing } from '../../../src/plot/run-drawing.ts';
import { runLayout } from '../../../src/plot/run-layout.ts';

const layout = runLayout([
  { into: -1, straight: false },
  { into: 0, straight: true },
  { into: 0, straight: false },
]);
const frame = { left: 20, right: 320, top: 0, bottom: 100 };

describe('the drawing of a run', () => {
  it('runs each section as the air does, from its open end', () => {
    const [main, run, branch] = runDrawing(layout, [0.15, 0.15, 0.1], frame);
    expect(main?.path).toMatch(/^M170,\d+H20$/);
    expect(run?.path).toMatch(/^M320,\d+H170$/);
    expect(branch?.path).toMatch(/^M320,25H188l-9,9V66L170,75$/);
  });

  it('weighs lines by diameter, within what can be told apart', () => {
    const weights = (diameters: number[]) =>
      runDrawing(layout, diameters, frame).map(({ weight }) => weight);
    const [wide = 0, middle = 0, narrow = 0] = weights([0.2, 0.15, 0.1]);
    expect(wide).toBeGreaterThan(middle);
    expect(middle).toBeGreaterThan(narrow);
    expect(Math.max(...weights([2, 0.01, 0.1]))).toBeLessThanOrEqual(16);
    expect(Math.min(...weights([2, 0.01, 0.1]))).toBeGreaterThanOrEqual(2);
  });

  it('leaves paper between the lines of a crowded run, and tells large from small there', () => {
    const crowded = { ...frame, bottom: 30 };
    const [main = 0, , branch = 0] = runDrawing(layout, [0.35, 0.2, 0.1], crowded).map(
      ({ weight }) => weight,
    );
    expect(main).toBeLessThan(15);
    expect(main).toBeGreaterThan(1.8 * branch);
  });

  it('puts arrows on level stretches only, evenly, and none where there is no room', () => {
    for (const { arrows, level } of runDrawing(layout, [0.15, 0.15, 0.1], frame)) {
      expect(arrows.length).toBeGreaterThan(0);
      expect(arrows.every((x) => x > level.from && x < level.to)).toBe(true);
    }
    const narrow = runDrawing(layout, [0.15, 0.15, 0.1], { ...frame, right: 60 });
    expect(narrow.some(({ arrows }) => arrows.length === 0)).toBe(true);
  });
});
