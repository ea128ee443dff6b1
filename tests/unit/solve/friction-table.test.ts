import { describe, expect, it } from 'vitest';
import { colebrook } from '../../../src/duct/colebrook.ts';
import type { FrictionLaw } from '../../../src/duct/friction-law.ts';
import { swameeJain } from '../../../src/duct/swamee-jain.ts';
import {
  CELL_LENGTH,
  cellOf,
  fillSpan,
  frictionTable,
  LAST_REYNOLDS,
  tabulatedFactor,
} from '../../../src/solve/friction-table.ts';
import { seededRandom } from '../../setup/random-tree.ts';

const POINTS = 10_000;

/** Reynolds numbers and roughnesses spread over all that the table and the laws admit. */
function randomPoints(from: number, to: number) {
  const random = seededRandom(2000);
  return Array.from({ length: POINTS }, () => ({
    reynolds: from * (to / from) ** random(),
    roughness: random() < 0.1 ? 0 : 1e-6 * 1e5 ** random(),
  }));
}

function worstDifference(law: FrictionLaw, from: number, to: number): number {
  const points = randomPoints(from, to);
  const roughness = Float64Array.from(points, (point) => point.roughness);
  // One table a hundred points: a row for each of ten thousand would be large.
  let worst = 0;
  for (let start = 0; start < POINTS; start += 100) {
    const table = frictionTable(law, roughness.subarray(start, start + 100));
    points.slice(start, start + 100).forEach((point, section) => {
      const exact = law.factor(point.reynolds, point.roughness);
      const tabulated = tabulatedFactor(table, section, point.reynolds);
      worst = Math.max(worst, Math.abs(tabulated / exact - 1));
    });
  }
  return worst;
}

describe.each([colebrook, swameeJain])('a table of $name', (law) => {
  it('is the law to 2e-11 where it is turbulent, at ten thousand random points', () => {
    // The error term is 1e-11 for a factor that falls like Re^-0.25; near Re 4000 both fall faster.
    expect(worstDifference(law, 4000, LAST_REYNOLDS)).toBeLessThan(2e-11);
  });

  it('is the law to rounding between laminar and turbulent, where that is a cubic itself', () => {
    expect(worstDifference(law, 2000, 4000)).toBeLessThan(1e-14);
  });

  it('is laminar below Reynolds 2000', () => {
    const table = frictionTable(law, Float64Array.of(1e-3));
    for (const reynolds of [1e-9, 1, 1999.9]) {
      expect(tabulatedFactor(table, 0, reynolds)).toBe(64 / reynolds);
    }
  });

  it('stays at its last value beyond its end', () => {
    const table = frictionTable(law, Float64Array.of(1e-3));
    const last = tabulatedFactor(table, 0, LAST_REYNOLDS);
    expect(last).toBeCloseTo(law.factor(LAST_REYNOLDS, 1e-3), 12);
    expect(tabulatedFactor(table, 0, 1e9)).toBe(last);
  });
});

describe('the spans', () => {
  it('follow each other without a gap, sixteen to an octave', () => {
    for (let k = 0; k < 14 * 16; k++) {
      const start = 2000 * 2 ** Math.floor(k / 16) * (1 + (k % 16) / 16);
      expect(cellOf(start)).toBe(k * CELL_LENGTH);
      if (k > 0) expect(cellOf(start * (1 - 1e-12))).toBe((k - 1) * CELL_LENGTH);
    }
  });

  it('are filled one by one', () => {
    const table = frictionTable(colebrook, Float64Array.of(0, 1e-3));
    const filled = () => table.cells.filter((_, i) => i % CELL_LENGTH === 0 && table.cells[i]! > 0);
    expect(filled()).toHaveLength(0);
    fillSpan(table, 1, 5e4);
    fillSpan(table, 1, 5.01e4);
    expect(filled()).toHaveLength(1);
    tabulatedFactor(table, 0, 5e4);
    expect(filled()).toHaveLength(2);
  });

  it('are shared by sections of the same relative roughness', () => {
    const table = frictionTable(colebrook, Float64Array.of(1e-3, 2e-3, 1e-3));
    expect(table.roughness).toEqual([1e-3, 2e-3]);
    expect(table.row[0]).toBe(table.row[2]);
    expect(table.row[0]).not.toBe(table.row[1]);
  });

  it('meet in value and in slope', () => {
    const table = frictionTable(colebrook, Float64Array.of(1e-3));
    for (const joint of [2125, 4000, 4250, 64_000]) {
      const step = joint * 1e-7;
      const at = (reynolds: number) => tabulatedFactor(table, 0, reynolds);
      const left = (at(joint) - at(joint - step)) / step;
      const right = (at(joint + step) - at(joint)) / step;
      // Differences over 1e-7 of Re see seven digits of the slope.
      expect(Math.abs(right / left - 1)).toBeLessThan(1e-5);
    }
  });
});
