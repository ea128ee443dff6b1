// What is assumed of pipes, fittings and wyes.
//
// 1. C. F. Colebrook, J. Inst. Civil Engrs 11 (1939) 133–156: friction in turbulent flow.
// 2. shared/fittings.json: every fitting with its source.

import fittings from '../../../shared/fittings.json' with { type: 'json' };
import { findPipe } from '../../duct/catalogue.ts';
import { type Provenance, provenanceOf } from '../../duct/provenance.ts';
import type { Fitting } from '../../shop/schema/fitting-schema.ts';
import type { Section } from '../../shop/schema/section-schema.ts';
import { formatQuantity } from '../../units/format.ts';
import type { Quantity, UnitSystem } from '../../units/quantity.ts';
import { type Assumption, eachOnce, entered, sourced } from './assumption.ts';

/**
 * What is assumed of the pipes.
 *
 * @param sections - the sections of the shop
 * @param system - the units to speak in
 * @returns rows to show, each pipe once
 */
export function assumedPipes(sections: readonly Section[], system: UnitSystem): Assumption[] {
  return [
    sourced('Friction in straight pipe', 'Colebrook–White', {
      citation: 'C. F. Colebrook, J. Inst. Civil Engrs 11, 133–156, 1939',
      status: 'verified',
    }),
    ...eachOnce(sections.flatMap((section) => pipeRows(section, system))),
  ];
}

function pipeRows({ pipe, compression = 0 }: Section, system: UnitSystem): Assumption[] {
  const show = (quantity: Quantity, si: number) => formatQuantity(quantity, system, si).text;
  if (pipe.kind === 'custom') {
    const size = show('diameter', pipe.diameter);
    return [
      entered('Pipe of your own', `${size} inside, rough by ${show('roughness', pipe.roughness)}`),
    ];
  }
  const found = findPipe(pipe.family, pipe.size);
  if (!found) return [];
  const rough = `Roughness of ${found.name.split(',')[0]?.toLowerCase()}`;
  const rows = [
    sourced(found.name, `${show('diameter', found.diameter)} inside`, found.diameterSource),
    pipe.roughness === undefined
      ? sourced(rough, show('roughness', found.roughness), found.roughnessSource)
      : entered(rough, show('roughness', pipe.roughness)),
  ];
  if (compression > 0) {
    rows.push(
      sourced('Hose pushed together', `${show('fraction', compression)} of its length`, {
        citation: 'B. Abushakra, I. S. Walker, M. H. Sherman, HVAC&R Research 10, 2004',
        status: 'from memory, unverified',
      }),
    );
  }
  return rows;
}

/**
 * What is assumed of bends and other fittings, of wyes, and of changes of diameter.
 *
 * @param sections - the sections of the shop
 * @returns rows to show, each kind of fitting once
 */
export function assumedFittings(sections: readonly Section[]): Assumption[] {
  const joins = sections.flatMap(({ join }) => (join ? [join] : []));
  const rows = sections.flatMap((section) => section.fittings.map(fittingRow));
  if (joins.some(({ kind }) => kind === 'momentum')) {
    rows.push(
      sourced('Wyes', 'momentum along the main, by the flows', {
        citation: 'The form of I. E. Idelchik, ch. 7, and Crane TP-410, example 7-35',
        status: 'verified',
      }),
    );
  }
  if (joins.some(({ kind }) => kind === 'fixed')) rows.push(entered('Some wyes', 'fixed K'));
  const cones = formula('conical-contraction');
  rows.push(sourced('Changes of diameter', 'a 30° cone, if nothing else is said', cones));
  return [...eachOnce(rows)];
}

function fittingRow(fitting: Fitting): Assumption {
  if (fitting.coefficient !== undefined) {
    return entered(fittingName(fitting), `K ${fitting.coefficient}`);
  }
  if (fitting.kind === 'plain') return entered(fittingName(fitting), '');
  if (fitting.kind !== 'gored') {
    return sourced(
      fittingName(fitting),
      'by formula',
      formula(`${fitting.kind === 'bend' ? 'smooth' : 'mitre'}-bend`),
    );
  }
  const id = `gored-${fitting.pieces}-r${fitting.radius.toFixed(1)}`;
  const row = fittings.rows.find((each) => each.id === id);
  const value = row ? `K ${row.coefficient} for 90°` : '';
  const from = row ? provenanceOf(row, fittings.sources) : UNKNOWN;
  return sourced(fittingName(fitting), value, from);
}

const UNKNOWN: Provenance = { citation: '', status: 'from memory, unverified' };

function fittingName(fitting: Fitting): string {
  if (fitting.kind === 'bend') return `Smooth bend, radius ${fitting.radius} × diameter`;
  if (fitting.kind === 'mitre') return 'Mitred bend';
  if (fitting.kind === 'plain') return fitting.name ?? 'Fitting by its K';
  return `Elbow of ${fitting.pieces} pieces, radius ${fitting.radius} × diameter`;
}

function formula(id: string): Provenance {
  const row = fittings.formulas.find((each) => each.id === id);
  return row ? provenanceOf(row, fittings.sources) : UNKNOWN;
}
