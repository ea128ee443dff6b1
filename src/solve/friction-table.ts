// The friction factor of every pipe of a network as polynomials over short spans of the Reynolds
// number, so that balancing a network evaluates no logarithm. A span is filled when it is first met.
// A span covers 1/16 of an octave. Its quintic takes value and slope of the law at both ends and in
// the middle; for a factor falling like Re^-0.25 the error term f⁽⁶⁾/720·max(t(t−½)(t−1))²·h⁶ is
// 1e-11 of f, for the two laws 2e-11 at most. Spans are counted from Re 2000, since the laws change
// their formula there and an octave above.

import type { FrictionLaw } from '../duct/friction-law.ts';

const OCTAVES = 14;
const SPANS_PER_OCTAVE = 16;
const ROW_LENGTH = OCTAVES * SPANS_PER_OCTAVE;

/** Up to this Reynolds number every law is 64/Re, and above it the table begins [-]. */
export const LAMINAR_END = 2000;
/** The last Reynolds number of the table, 3e7; a duct of 0.3 m would run at 1,600 m/s [-]. */
export const LAST_REYNOLDS = LAMINAR_END * 2 ** OCTAVES * 0.999;
/** The table's measure of a Reynolds number: Re 2000 becomes 1024, Re 4000 becomes 2048 [-]. */
export const TABLE_SCALE = 1024 / LAMINAR_END;

/** A span in `cells`: six coefficients of f over 0…1. */
export const CELL_LENGTH = 6;

export interface FrictionTable {
  readonly law: FrictionLaw;
  /** Relative roughness of each row [-]. */
  readonly roughness: readonly number[];
  /** Where each section's row begins in `cells`, less what {@link cellOf} adds at Re 2000. */
  readonly row: Int32Array;
  /** The spans; all zeros while one is empty. */
  readonly cells: Float64Array;
}

/**
 * Makes an empty table with one row for each distinct relative roughness.
 * @param law - the friction law
 * @param relativeRoughness - ε/D of each section [-], shape (sections)
 * @returns the table, all spans empty
 */
export function frictionTable(law: FrictionLaw, relativeRoughness: Float64Array): FrictionTable {
  const rows = new Map<number, number>();
  const row = relativeRoughness.map((value) => {
    const known = rows.get(value) ?? rows.size;
    rows.set(value, known);
    return known * ROW_LENGTH * CELL_LENGTH;
  });
  const cells = new Float64Array(rows.size * ROW_LENGTH * CELL_LENGTH);
  return { law, roughness: [...rows.keys()], row: Int32Array.from(row), cells };
}

/**
 * Where the span of a Reynolds number is, counted from the beginning of its row.
 * @param reynolds - Reynolds number, from 2000 to {@link LAST_REYNOLDS} [-]
 * @returns place in `cells` after the row's own [-]
 * @example
 * cellOf(2000); // => 0
 * cellOf(4000); // => 96
 */
export function cellOf(reynolds: number): number {
  const whole = (reynolds * TABLE_SCALE) | 0;
  const shift = 27 - Math.clz32(whole);
  return (((shift - 7) << 4) + (whole >> shift)) * CELL_LENGTH;
}

/**
 * The friction factor of a section, from the table where it has one.
 * @param table - the table; an empty span is filled
 * @param section - index of the section [-]
 * @param reynolds - Reynolds number, above 0 [-]
 * @returns Darcy friction factor [-]
 */
export function tabulatedFactor(table: FrictionTable, section: number, reynolds: number): number {
  if (reynolds <= LAMINAR_END) return 64 / reynolds;
  const re = reynolds < LAST_REYNOLDS ? reynolds : LAST_REYNOLDS;
  const cell = table.row[section]! + cellOf(re);
  const { cells } = table;
  if (cells[cell] === 0) fillSpan(table, section, re);
  const whole = (re * TABLE_SCALE) | 0;
  const shift = 27 - Math.clz32(whole);
  const x = (re * TABLE_SCALE) / (1 << shift) - (whole >> shift);
  const high = cells[cell + 3]! + x * (cells[cell + 4]! + x * cells[cell + 5]!);
  return cells[cell]! + x * (cells[cell + 1]! + x * (cells[cell + 2]! + x * high));
}

/**
 * Fills the span in which a Reynolds number lies: the quintic with the law's value and slope at
 * both ends and in the middle, by divided differences on doubled nodes.
 * @param table - the table
 * @param section - index of the section [-]
 * @param reynolds - Reynolds number, from 2000 to {@link LAST_REYNOLDS} [-]
 */
export function fillSpan(table: FrictionTable, section: number, reynolds: number): void {
  const cell = table.row[section]! + cellOf(reynolds);
  const roughness = table.roughness[Math.floor(cell / (ROW_LENGTH * CELL_LENGTH))]!;
  const whole = Math.floor(reynolds * TABLE_SCALE);
  const shift = 27 - Math.clz32(whole);
  const width = 2 ** shift / TABLE_SCALE;
  const start = (whole >> shift) * width;
  const { law } = table;
  const middle = start + 0.5 * width;
  const end = start + width;
  const f0 = law.factor(start, roughness);
  const f1 = law.factor(middle, roughness);
  const f2 = law.factor(end, roughness);
  const s0 = law.slope(start, roughness) * width;
  const s1 = law.slope(middle, roughness) * width;
  const s2 = law.slope(end, roughness) * width;
  const d01 = 2 * (f1 - f0);
  const d12 = 2 * (f2 - f1);
  const e0 = 2 * (d01 - s0);
  const e1 = 2 * (s1 - d01);
  const e2 = 2 * (d12 - s1);
  const e3 = 2 * (s2 - d12);
  const g0 = 2 * (e1 - e0);
  const g1 = e2 - e1;
  const g2 = 2 * (e3 - e2);
  const h0 = g1 - g0;
  const k = g2 - g1 - h0;
  const b1 = h0 - 1.5 * k;
  const b0 = g0 - (h0 - k) / 2;
  const { cells } = table;
  cells[cell] = f0;
  cells[cell + 1] = s0;
  cells[cell + 2] = e0 - b0 / 2;
  cells[cell + 3] = b0 - b1 / 2;
  cells[cell + 4] = b1 - k / 2;
  cells[cell + 5] = k;
}
