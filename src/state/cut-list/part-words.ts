// What the parts of a cut list are called that are bought by the piece.

import type { ChangeLine } from '../../shop/cut-list/change-lines.ts';
import type { FittingLine, GateLine } from '../../shop/cut-list/part-lines.ts';
import type { WyeLine } from '../../shop/cut-list/wye-lines.ts';
import type { Fitting } from '../../shop/schema/fitting-schema.ts';
import type { Transition } from '../../shop/schema/section-schema.ts';
import { formatQuantity } from '../../units/format.ts';
import type { UnitSystem } from '../../units/quantity.ts';
import { endWords, familyInside, sizeWords } from './stock-words.ts';

/**
 * A fitting in words.
 *
 * @param line - fittings that are alike
 * @param system - the units to speak in
 * @returns such as 'Bend 90°, radius 1.5 × diameter: 4 in. PVC (schedule 40)'
 */
export function fittingWords({ fitting, pipe }: FittingLine, system: UnitSystem): string {
  return `${shapeWords(fitting)}: ${sizeWords(pipe, system)} ${familyInside(pipe, system)}`;
}

/**
 * A wye in words.
 *
 * @param line - wyes that are alike
 * @param system - the units to speak in
 * @returns sizes as the air comes in and goes out, with the angle of each branch
 */
export function wyeWords({ into, straight, branches }: WyeLine, system: UnitSystem): string {
  const ends = branches.map(({ pipe, angle }) => {
    const slant = angle === undefined ? 'at an angle that was not entered' : `at ${degrees(angle)}`;
    return `${sizeWords(pipe, system)} ${slant}`;
  });
  const comeIn =
    straight === undefined
      ? ends.join(' and ')
      : `${sizeWords(straight, system)} straight on, ${ends.join(' and ')}`;
  return `Wye ${sizeWords(into, system)}, from ${comeIn}: ${familyInside(into, system)}`;
}

/**
 * A gate in words.
 *
 * @param line - gates of one size
 * @param system - the units to speak in
 * @returns such as 'Blast gate 6 in.'
 */
export function gateWords({ pipe }: GateLine, system: UnitSystem): string {
  return `Blast gate ${sizeWords(pipe, system)}`;
}

/**
 * A reducer or connector in words.
 *
 * @param line - reducers or connectors that are alike
 * @param system - the units to speak in
 * @returns the two ends, and how a reducer changes
 */
export function changeWords(line: ChangeLine, system: UnitSystem): string {
  const ends = `from ${endWords(line.from, system)} to ${endWords(line.to, system)}`;
  if (line.kind === 'connector') return `Connector ${ends}`;
  return `Reducer ${ends}${coneWords(line.transition)}`;
}

function coneWords(transition: Transition | undefined): string {
  if (transition === undefined) return ', cone of 30°';
  if (transition.kind === 'taper') return `, cone of ${degrees(transition.angle)}`;
  return transition.kind === 'sudden' ? ', a step' : '';
}

function shapeWords(fitting: Fitting): string {
  switch (fitting.kind) {
    case 'bend':
      return `Bend ${degrees(fitting.angle)}, radius ${fitting.radius} × diameter`;
    case 'mitre':
      return `Mitred bend ${degrees(fitting.angle)}`;
    case 'gored':
      return `Elbow ${degrees(fitting.angle)} of ${fitting.pieces} pieces, radius ${fitting.radius} × diameter`;
    case 'plain':
      return upperFirst(fitting.name ?? 'part entered by its coefficient');
    default:
      return fitting satisfies never;
  }
}

function upperFirst(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function degrees(angle: number): string {
  return formatQuantity('angle', 'us', angle).text.replace('\u2009', '');
}
