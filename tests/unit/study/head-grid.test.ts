import { describe, expect, it } from 'vitest';
import {
  CUBIC_LENGTH,
  cubicsOf,
  GRID_POINTS,
  gridReading,
  headGridUpTo,
  moveReading,
  readTable,
  regrid,
} from '../../../src/study/head-grid.ts';

const cubic = (x: number) => 2 - x + 0.5 * x ** 2 + 0.01 * x ** 3;
const table = Float64Array.from({ length: GRID_POINTS }, (_, k) => cubic(k));

describe('a reading on the grid', () => {
  it('gives a cubic and its slope back at any head, between, on and before the points', () => {
    const reading = gridReading();
    for (const x of [0, 0.3, 1, 7.77, 20, GRID_POINTS - 1.5, GRID_POINTS - 1]) {
      moveReading(reading, x);
      expect(readTable(table, reading, reading.weights)).toBeCloseTo(cubic(x), 8);
      const slope = -1 + x + 0.03 * x ** 2;
      expect(readTable(table, reading, reading.slopeWeights)).toBeCloseTo(slope, 8);
    }
  });
});

describe('a table as cubics', () => {
  it('is read between any two points as a reading reads it', () => {
    const wavy = Float64Array.from({ length: GRID_POINTS }, (_, k) => Math.sin(k / 3) + k ** 1.5);
    const cubics = new Float64Array(GRID_POINTS * CUBIC_LENGTH);
    cubicsOf(wavy, cubics);
    const reading = gridReading();
    for (const x of [0, 0.4, 1, 1.7, 23.2, GRID_POINTS - 2.5, GRID_POINTS - 1.3]) {
      moveReading(reading, x);
      const k = Math.floor(x);
      const [c0, c1, c2, c3] = cubics.subarray(CUBIC_LENGTH * k);
      const t = x - k;
      const value = c0! + t * (c1! + t * (c2! + t * c3!));
      const slope = c1! + t * (2 * c2! + 3 * t * c3!);
      expect(value).toBeCloseTo(readTable(wavy, reading, reading.weights), 9);
      expect(slope).toBeCloseTo(readTable(wavy, reading, reading.slopeWeights), 9);
    }
  });
});

describe('the grid', () => {
  it('holds the strongest suction with room above', () => {
    expect(headGridUpTo(2500).step * (GRID_POINTS - 1)).toBeGreaterThan(50);
  });

  it('refuses suctions that are none', () => {
    expect(() => headGridUpTo(0)).toThrow('above 0: 0');
    expect(() => headGridUpTo(Number.NaN)).toThrow(RangeError);
  });
});

describe('regridding', () => {
  it('carries a smooth function from uneven heads to the even grid', () => {
    const heads = Float64Array.from({ length: GRID_POINTS }, (_, k) => k * (1.05 + 0.002 * k));
    const values = heads.map((x) => x ** 1.1);
    const onto = new Float64Array(GRID_POINTS);
    regrid(heads, values, onto);
    // Three-point slopes err by h²·f'''/6, 1e-3 at x = 5; between points that makes 2e-5 of f.
    for (let m = 5; m < GRID_POINTS; m++) expect(onto[m]! / m ** 1.1).toBeCloseTo(1, 4);
  });
});
