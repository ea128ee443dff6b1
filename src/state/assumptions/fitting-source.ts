// What a fitting is called, and where its loss comes from.
//
// 1. shared/fittings.json: every fitting with its source.

import fittings from '../../../shared/fittings.json' with { type: 'json' };
import { type Provenance, provenanceOf } from '../../duct/provenance.ts';
import type { Fitting } from '../../shop/schema/fitting-schema.ts';

const UNKNOWN: Provenance = { citation: '', status: 'from memory, unverified' };

/**
 * A fitting in words.
 *
 * @param fitting - a fitting of a section
 * @returns 'Mitred bend', or its own name where it has only a coefficient
 */
export function fittingName(fitting: Fitting): string {
  if (fitting.kind === 'bend') return `Smooth bend, radius ${fitting.radius} × diameter`;
  if (fitting.kind === 'mitre') return 'Mitred bend';
  if (fitting.kind === 'plain') {
    const { name = 'Fitting by its K' } = fitting;
    return name.charAt(0).toUpperCase() + name.slice(1);
  }
  return `Elbow of ${fitting.pieces} pieces, radius ${fitting.radius} × diameter`;
}

/**
 * Where the computed loss of a fitting comes from.
 *
 * @param fitting - any but a plain coefficient, which is the maker's own
 * @returns its source
 */
export function fittingSource(fitting: Exclude<Fitting, { readonly kind: 'plain' }>): Provenance {
  if (fitting.kind === 'bend') return formulaSource('smooth-bend');
  if (fitting.kind === 'mitre') return formulaSource('mitre-bend');
  const row = goredRow(fitting);
  return row ? provenanceOf(row, fittings.sources) : UNKNOWN;
}

/**
 * The row of the table for a gored elbow.
 *
 * @param fitting - a gored elbow
 * @returns its coefficient for 90 degrees and its source, or undefined if the table lacks it
 */
export function goredRow(fitting: Extract<Fitting, { readonly kind: 'gored' }>) {
  const id = `gored-${fitting.pieces}-r${fitting.radius.toFixed(1)}`;
  return fittings.rows.find((row) => row.id === id);
}

/**
 * The source of a formula of the table.
 *
 * @param id - such as 'smooth-bend'
 * @returns its source
 */
export function formulaSource(id: string): Provenance {
  const row = fittings.formulas.find((each) => each.id === id);
  return row ? provenanceOf(row, fittings.sources) : UNKNOWN;
}

/**
 * The source of a fixed branch factor, where it is one of the table's.
 *
 * @param coefficient - on the branch's velocity pressure [-]
 * @returns its source, or undefined for a number of the maker's own
 */
export function branchFactorSource(coefficient: number): Provenance | undefined {
  const row = fittings.rows.find(
    (each) => each.kind === 'branch' && each.coefficient === coefficient,
  );
  return row && provenanceOf(row, fittings.sources);
}
