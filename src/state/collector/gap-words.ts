// What lies between the pressures as entered and what the ducts get, at the operating point: in words,
// correction by correction.

import type { PressureTermKind, PressureTerms } from '../../curve/pressure-terms.ts';
import type { Curve } from '../../shop/schema/curve-schema.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { basisShort } from './basis-short.ts';

/** Less than this is nothing to speak of [Pa]. */
const LEAST = 1;

const WHY: Readonly<Record<PressureTermKind, string>> = {
  arrangement: 'as they share the work',
  density: 'for the density of the air here',
  speed: 'for the speed',
  wheel: 'for the wheel',
  tap: 'for the velocity pressure that the tap reads on top',
  separator: 'for the separator',
  filter: 'for the filter',
};

/**
 * The gap in words.
 *
 * @param flow - at the operating point [m³/s]
 * @param terms - from the entered pressure to the one that is left
 * @param basis - what the entered ones are
 * @param system - the units to speak in
 * @returns one or two sentences
 */
export function gapWords(
  flow: number,
  { entered, terms, available }: PressureTerms,
  basis: Curve['basis'],
  system: UnitSystem,
): string {
  const show = (pressure: number) => formatQuantity('pressure', system, pressure).text;
  const signed = (change: number) => `${change < 0 ? '−' : '+'}${show(Math.abs(change))}`;
  const at = `At the operating point, ${formatQuantity('flow', system, flow).text},`;
  const told = terms.filter(({ change }) => Math.abs(change) >= LEAST);
  if (told.length === 0) return `${at} the ducts get what was entered, ${show(available)}.`;
  const parts = told.map(({ kind, change }) => `${signed(change)} ${WHY[kind]}`);
  const tap = told.find(({ kind }) => kind === 'tap');
  const trap = tap
    ? ` Taken as fan static pressure, the same numbers would promise ${show(Math.abs(tap.change))} too much.`
    : '';
  const line = `${at} the points say ${show(entered)} of ${basisShort(basis.kind)} and the ducts get ${show(available)}: ${parts.join(', ')}.`;
  return `${line}${trap}`.replaceAll('..', '.');
}
