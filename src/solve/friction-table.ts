// The friction factor of every pipe of a network as polynomials over short spans of the Reynolds
// number, so that balancing a network evaluates no logarithm. A span is filled when it is first met.
// A span covers 1/16 of an octave. Its quintic takes value and slope of the law at both ends and in
// the middle; for a factor falling like Re^-0.25 the error term f⁽⁶⁾/720·max(t(t−½)(t−1))²·h⁶ is
// 1e-11 of f at most. Spans are counted from Re 2000, where the laws change their formula.

import type { FrictionLaw } from '../duct/friction-law.ts';

const OCTAVES = 14;
const SPANS_PER_OCTAVE = 16;
const COEFFICIENTS = 6;
const ROW_LENGTH = OCTAVES * SPANS_PER_OCTAVE * COEFFICIENTS;

/** Re 2000 in the table's own measure, whose powers of two begin the octaves. */
const TABLE_START = 1024;
/** The table's measure of a Reynolds number: Re 2000 becomes 1024, Re 4000 becomes 2048 [-]. */
export const TABLE_SCALE = TABLE_START / 2000;
/** Above this Reynolds number the table ends and the law itself is asked [-]. */
export const TABLE_END = 2000 * 2 ** OCTAVES;
/** Up to this Reynolds number every law is 64/Re [-]. */
export const LAMINAR_END = 2000;

export interface FrictionTable {
  readonly law: FrictionLaw;
  /** Relative roughness of each row [-]. */
  readonly roughness: readonly number[];
  /** Where each section's row begins in `cells`. */
  readonly row: Int32Array;
  /** Six polynomial coefficients a span; the first is 0 while the span is empty [-]. */
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
  const row = new Int32Array(relativeRoughness.length);
  relativeRoughness.forEach((value, section) => {
    const known = rows.get(value) ?? rows.size;
    rows.set(value, known);
    row[section] = known * ROW_LENGTH;
  });
  return { law, roughness: [...rows.keys()], row, cells: new Float64Array(rows.size * ROW_LENGTH) };
}

/**
 * Friction factor and its slope by the table, for Re above {@link LAMINAR_END}.
 * @param table - the table
 * @param section - index of the section [-]
 * @param reynolds - Reynolds number [-], above 2000
 * @param out - receives f [-] and df/dRe [-], shape (2)
 */
export function tabulatedFriction(
  table: FrictionTable,
  section: number,
  reynolds: number,
  out: Float64Array,
): void {
  if (reynolds >= TABLE_END) return askLaw(table, section, reynolds, out);
  const measure = reynolds * TABLE_SCALE;
  const whole = measure | 0;
  const shift = 27 - Math.clz32(whole);
  const span = whole >> shift;
  const cell = table.row[section]! + (((shift - 6) << 4) + span - 16) * COEFFICIENTS;
  const cells = table.cells;
  if (cells[cell] === 0) fillSpan(table, cell, span, shift);
  const perMeasure = 1 / (1 << shift);
  const t = measure * perMeasure - span;
  const c1 = cells[cell + 1]!;
  const c2 = cells[cell + 2]!;
  const c3 = cells[cell + 3]!;
  const c4 = cells[cell + 4]!;
  const c5 = cells[cell + 5]!;
  out[0] = cells[cell]! + t * (c1 + t * (c2 + t * (c3 + t * (c4 + t * c5))));
  const perSpan = c1 + t * (2 * c2 + t * (3 * c3 + t * (4 * c4 + t * 5 * c5)));
  out[1] = perSpan * perMeasure * TABLE_SCALE;
}

function askLaw(table: FrictionTable, section: number, reynolds: number, out: Float64Array): void {
  const roughness = table.roughness[table.row[section]! / ROW_LENGTH]!;
  out[0] = table.law.factor(reynolds, roughness);
  out[1] = table.law.slope(reynolds, roughness);
}

/** Quintic through value and slope at t = 0, ½ and 1, by divided differences on doubled nodes. */
function fillSpan(table: FrictionTable, cell: number, span: number, shift: number): void {
  const roughness = table.roughness[Math.floor(cell / ROW_LENGTH)]!;
  const width = 2 ** shift / TABLE_SCALE;
  const at = (t: number) => table.law.factor((span + t) * width, roughness);
  const slopeAt = (t: number) => table.law.slope((span + t) * width, roughness) * width;
  const [f0, f1, f2] = [at(0), at(0.5), at(1)];
  const [s0, s1, s2] = [slopeAt(0), slopeAt(0.5), slopeAt(1)];
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
  table.cells.set([f0, s0, e0 - b0 / 2, b0 - b1 / 2, b1 - k / 2, k], cell);
}
