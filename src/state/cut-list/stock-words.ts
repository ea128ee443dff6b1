// What a pipe, and what joins two of them, is called on a cut list.

import { PIPE_FAMILIES } from '../../duct/catalogue.ts';
import type { ChangeEnd } from '../../shop/cut-list/change-lines.ts';
import { OWN_FAMILY, type StockPipe } from '../../shop/cut-list/stock-pipe.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';

/**
 * A kind of pipe in words.
 *
 * @param pipe - a pipe of the kind
 * @param system - the units to speak in
 * @returns such as 'Galvanised steel, spiral'
 */
export function familyWords(
  { family, roughness }: Pick<StockPipe, 'family' | 'roughness'>,
  system: UnitSystem,
): string {
  const found = PIPE_FAMILIES.find(({ id }) => id === family);
  if (found) return found.name;
  return `Pipe of your own, rough by ${formatQuantity('roughness', system, roughness).text}`;
}

/**
 * A size in words: as it is asked for, and for a pipe of the maker's own by its inside diameter.
 *
 * @param pipe - a pipe of the size
 * @param system - the units to speak in
 * @returns such as '6 in.'
 */
export function sizeWords({ family, size, diameter }: StockPipe, system: UnitSystem): string {
  const sizes = isOwn(family) ? [] : PIPE_FAMILIES.flatMap((each) => each.sizes);
  const asked = sizes.find(({ id }) => id === size);
  return (
    asked?.name.replace(/ (in\.|mm)/, '\u2009$1') ??
    formatQuantity('diameter', system, diameter).text
  );
}

/**
 * A pipe in words.
 *
 * @param pipe - the pipe
 * @param system - the units to speak in
 * @returns such as 'Galvanised steel, spiral, 6 in.'
 */
export function pipeWords(pipe: StockPipe, system: UnitSystem): string {
  return `${familyWords(pipe, system)}, ${sizeWords(pipe, system)}`;
}

/**
 * An end of a reducer or connector in words.
 *
 * @param end - a pipe or a port
 * @param system - the units to speak in
 * @returns such as '6 in. galvanised steel, spiral' or '5 in. port of a machine'
 */
export function endWords(end: ChangeEnd, system: UnitSystem): string {
  if (end.kind === 'port') {
    return `${formatQuantity('diameter', system, end.diameter).text} machine port`;
  }
  const kind = isOwn(end.pipe.family) ? 'pipe of your own' : familyInside(end.pipe, system);
  return `${sizeWords(end.pipe, system)} ${kind}`;
}

/**
 * A kind of pipe inside a sentence: what is behind the comma of its name goes into brackets.
 *
 * @param pipe - a pipe of the kind
 * @param system - the units to speak in
 * @returns such as 'galvanised steel (spiral)'
 */
export function familyInside(
  pipe: Pick<StockPipe, 'family' | 'roughness'>,
  system: UnitSystem,
): string {
  const words = familyWords(pipe, system).replace(/, (.*)$/, ' ($1)');
  // A word that is no abbreviation begins small.
  return /^[A-Z][a-z]/.test(words) ? words.charAt(0).toLowerCase() + words.slice(1) : words;
}

function isOwn(family: string): boolean {
  return family.startsWith(`${OWN_FAMILY}-`);
}
