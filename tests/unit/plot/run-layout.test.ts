import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runLayout, type RunSection } from '../../../src/plot/run-layout.ts';

const section = (into: number, straight = false): RunSection => ({ into, straight });

describe('the layout of a run', () => {
  it('keeps the straight run on one line, branches on both sides of it', () => {
    const { sections, rows } = runLayout([
      section(-1),
      section(0, true),
      section(0),
      section(1, true),
      section(1),
    ]);
    expect(rows).toBe(3);
    expect(sections[1]?.row).toBe(sections[0]?.row);
    expect(sections[3]?.row).toBe(sections[0]?.row);
    const sides = [sections[2], sections[4]].map((each) => Math.sign(each!.row - sections[0]!.row));
    expect(new Set(sides)).toEqual(new Set([-1, 1]));
  });

  it('shares the columns of a run without a wye among its sections', () => {
    const { sections, columns } = runLayout([section(-1), section(0), section(1)]);
    expect(columns).toBe(1);
    expect(sections.map(({ start }) => start)).toEqual([
      0,
      expect.closeTo(1 / 3),
      expect.closeTo(2 / 3),
    ]);
    expect(sections[2]?.end).toBeCloseTo(1);
  });

  it('puts a wye without a straight run in the middle of its inlets', () => {
    const { sections } = runLayout([section(-1), section(0), section(0)]);
    expect(sections[0]?.row).toBe(0.5);
  });

  it('crosses no ducts: of any random tree', () => {
    const tree = fc
      .array(fc.tuple(fc.nat(), fc.boolean()), { maxLength: 60 })
      .map((raw) => [
        section(-1),
        ...raw.map(([into, straight], i) => section(into % (i + 1), straight)),
      ]);
    fc.assert(
      fc.property(tree, (sections) => {
        const layout = runLayout(sections);
        const leaves = layout.sections.filter((_, i) => sections.every(({ into }) => into !== i));
        expect(leaves.map(({ row }) => row).toSorted((a, b) => a - b)).toEqual(
          leaves.map((_, i) => i),
        );
        expect(leaves.every(({ end }) => Math.abs(end - layout.columns) < 1e-9)).toBe(true);
        layout.sections.forEach((riser) => {
          const low = Math.min(riser.row, riser.intoRow);
          const high = Math.max(riser.row, riser.intoRow);
          const crossed = layout.sections.filter(
            ({ row, start, end }) =>
              row > low + 1e-9 &&
              row < high - 1e-9 &&
              start < riser.start - 1e-9 &&
              end > riser.start + 1e-9,
          );
          expect(crossed).toEqual([]);
        });
      }),
      { seed: 11, numRuns: 300 },
    );
  });

  it('refuses a run that reaches no collector', () => {
    expect(() => runLayout([section(0)])).toThrow(RangeError);
  });
});
