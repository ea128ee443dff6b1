// What is assumed of pipes, fittings and wyes.
//
// 1. C. F. Colebrook, J. Inst. Civil Engrs 11 (1939) 133–156: friction in turbulent flow.
// 2. shared/fittings.json: every fitting with its source.

import { findPipe } from '../../duct/catalogue.ts';
import type { Fitting } from '../../shop/schema/fitting-schema.ts';
import type { Section } from '../../shop/schema/section-schema.ts';
import { listed } from '../../shop/listed.ts';
import { formatQuantity } from '../../units/format.ts';
import { type Quantity, unitLabel, type UnitSystem } from '../../units/quantity.ts';
import { type Assumption, eachOnce, entered, sourced } from './assumption.ts';
import { fittingName, fittingSource, formulaSource, goredRow } from './fitting-source.ts';
import { HOSE_SOURCE, WYE_SOURCE } from './known-sources.ts';

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
    ...eachOnce(
      sections.flatMap((section) =>
        section.pipe.kind === 'custom'
          ? [ownPipes(sections, section.pipe.roughness, system)]
          : pipeRows(section.pipe, section.compression ?? 0, system),
      ),
    ),
  ];
}

/** All sizes of the maker's own pipe of one wall in one row, the widest first. */
function ownPipes(sections: readonly Section[], roughness: number, system: UnitSystem): Assumption {
  const diameters = sections.flatMap(({ pipe }) =>
    pipe.kind === 'custom' && pipe.roughness === roughness ? [pipe.diameter] : [],
  );
  const sizes = diameters
    .toSorted((a, b) => b - a)
    .map((diameter) => formatQuantity('diameter', system, diameter).number);
  const unit = unitLabel('diameter', system);
  const rough = formatQuantity('roughness', system, roughness).text;
  return entered(
    `Pipe of your own, rough by ${rough}`,
    `${listed([...new Set(sizes)])}\u2009${unit} inside`,
  );
}

function pipeRows(
  pipe: Extract<Section['pipe'], { readonly kind: 'catalogue' }>,
  compression: number,
  system: UnitSystem,
): Assumption[] {
  const show = (quantity: Quantity, si: number) => formatQuantity(quantity, system, si).text;
  const found = findPipe(pipe.family, pipe.size);
  if (!found) return [];
  const rough = `Roughness of ${inSentence(found.name.split(',')[0] ?? '')}`;
  const rows = [
    sourced(found.name, `${show('diameter', found.diameter)} inside`, found.diameterSource),
    pipe.roughness === undefined
      ? sourced(rough, show('roughness', found.roughness), found.roughnessSource)
      : entered(rough, show('roughness', pipe.roughness)),
  ];
  if (compression > 0) {
    rows.push(
      sourced(
        'Hose pushed together',
        `${show('fraction', compression)} of its length`,
        HOSE_SOURCE,
      ),
    );
  }
  return rows;
}

/** A name in the midst of a sentence: small, unless it begins with letters that stand for words. */
function inSentence(name: string): string {
  return /^[A-Z]{2}/.test(name) ? name : name.charAt(0).toLowerCase() + name.slice(1);
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
    rows.push(sourced('Wyes', 'momentum along the main, by the flows', WYE_SOURCE));
  }
  if (joins.some(({ kind }) => kind === 'fixed')) rows.push(entered('Some wyes', 'fixed K'));
  const cones = formulaSource('conical-contraction');
  rows.push(sourced('Changes of diameter', 'a 30° cone, if nothing else is said', cones));
  return [...eachOnce(rows)];
}

function fittingRow(fitting: Fitting): Assumption {
  const name = fittingName(fitting);
  if (fitting.coefficient !== undefined) return entered(name, `K ${fitting.coefficient}`);
  if (fitting.kind === 'plain') return entered(name, '');
  const row = fitting.kind === 'gored' ? goredRow(fitting) : undefined;
  return sourced(name, row ? `K ${row.coefficient} for 90°` : 'by formula', fittingSource(fitting));
}
