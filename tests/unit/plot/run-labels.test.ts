// No word of the drawing covers a duct other than its own, or another word, whatever the run.
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box } from '../../../src/plot/frame.ts';
import { type DrawnSection, runDrawing } from '../../../src/plot/run-drawing.ts';
import { arrowsBeside } from '../../../src/plot/run-arrows.ts';
import { runLabels } from '../../../src/plot/run-labels.ts';
import { runLayout, type RunSection } from '../../../src/plot/run-layout.ts';

const page = { left: 36, right: 640, top: 0, bottom: 480 };
const words = {
  speed: [
    { width: 96, height: 12 },
    { width: 36, height: 12 },
  ],
  length: [
    { width: 110, height: 12 },
    { width: 40, height: 12 },
  ],
};
const tree = fc
  .array(fc.tuple(fc.nat(), fc.boolean()), { maxLength: 50 })
  .map((raw): RunSection[] => [
    { into: -1, straight: false },
    ...raw.map(([into, straight], i) => ({ into: into % (i + 1), straight })),
  ]);
const draw = (sections: readonly RunSection[]) =>
  runDrawing(
    runLayout(sections),
    sections.map((_, i) => 0.1 + 0.05 * (i % 3)),
    page,
  );
const overlaps = (a: Box, b: Box) =>
  a.left < b.right - 0.01 &&
  b.left < a.right - 0.01 &&
  a.top < b.bottom - 0.01 &&
  b.top < a.bottom - 0.01;
const levelBox = ({ level, weight }: DrawnSection): Box => ({
  left: level.from,
  right: level.to,
  top: level.y - weight / 2,
  bottom: level.y + weight / 2,
});

describe('the words on the drawing of a run', () => {
  it('cover no other duct and no other word', () => {
    fc.assert(
      fc.property(tree, (sections) => {
        const drawn = draw(sections);
        const labels = runLabels(
          drawn,
          drawn.map(() => words),
          page,
        );
        const placed = labels.flatMap(({ speed, length }, section) =>
          [speed, length].flatMap((label) => (label ? [{ ...label, section }] : [])),
        );
        placed.forEach(({ box, side, section }, i) => {
          expect(placed.slice(i + 1).some((other) => overlaps(other.box, box))).toBe(false);
          drawn.forEach((duct, at) => {
            if (at !== section || side !== 'in') expect(overlaps(levelBox(duct), box)).toBe(false);
          });
          expect(box.left >= page.left && box.right <= page.right).toBe(true);
        });
      }),
      { seed: 7, numRuns: 200 },
    );
  });

  it('are all there, in full, where there is room', () => {
    const drawn = draw([
      { into: -1, straight: false },
      { into: 0, straight: true },
      { into: 0, straight: false },
    ]);
    for (const { speed, length } of runLabels(
      drawn,
      drawn.map(() => words),
      page,
    )) {
      expect(speed).toMatchObject({ form: 0, side: 'above' });
      expect(length).toMatchObject({ form: 0, side: 'below' });
    }
  });

  it('push an arrow aside that they are written over', () => {
    const [section] = draw([{ into: -1, straight: false }]);
    const middle = section!.arrows[3]!;
    const box = { left: middle - 20, right: middle + 20, top: 0, bottom: 12 };
    const label = { form: 0, side: 'in', box } as const;
    const beside = arrowsBeside(section!, { speed: label, length: undefined });
    expect(beside).toHaveLength(section!.arrows.length - 1);
    const only = { ...section!, arrows: [middle] };
    const [moved] = arrowsBeside(only, { speed: label, length: undefined });
    expect(moved! < box.left || moved! > box.right).toBe(true);
  });
});
