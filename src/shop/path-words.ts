// The parts on a drop's way to the collector as a reader calls them.

import { formatQuantity } from '../units/format.ts';
import type { UnitSystem } from '../units/quantity.ts';
import type { PathPart } from './path-losses.ts';
import type { Fitting } from './schema/fitting-schema.ts';

/** Travel of a gate that counts as drawn right out [-]. */
const RIGHT_OUT = 0.995;

/**
 * A part in a few words.
 *
 * @param part - a part on the way
 * @param system - the units to speak in
 * @returns such as `6' 3" of 6 in. pipe`, 'gate, 62 % open' or '2 bends of 90°'
 */
export function partWords(part: PathPart, system: UnitSystem): string {
  switch (part.kind) {
    case 'hood':
      return 'hood';
    case 'port':
      return `port, ${fromTo(part.from, part.to, system)}`;
    case 'gate':
      return gateWords(part.travel);
    case 'pipe':
    case 'hose': {
      const length = formatQuantity('length', system, part.length).text;
      return `${length} of ${formatQuantity('diameter', system, part.diameter).text} ${part.kind}`;
    }
    case 'fitting':
      return fittingWords(part.fitting);
    case 'change':
      return part.from === part.to ? 'joint' : `reducer, ${fromTo(part.from, part.to, system)}`;
    case 'wye':
      return 'wye';
  }
}

/**
 * A fitting in a few words.
 *
 * @param fitting - a fitting of a section
 * @returns its name if it has one, else count and shape, such as '3 mitres of 45°'
 */
export function fittingWords(fitting: Fitting): string {
  const { name, count = 1 } = fitting;
  if (name !== undefined) return name;
  switch (fitting.kind) {
    case 'bend':
      return counted(count, 'bend', fitting.angle);
    case 'mitre':
      return counted(count, 'mitre', fitting.angle);
    case 'gored':
      return counted(count, `${fitting.pieces}-piece elbow`, fitting.angle);
    case 'plain':
      return count === 1 ? 'other loss' : `${count} other losses`;
  }
}

function counted(count: number, noun: string, angle: number): string {
  const degrees = Math.round(10 * angle) / 10;
  return count === 1 ? `${noun} of ${degrees}°` : `${count} ${noun}s of ${degrees}°`;
}

function gateWords(travel: number): string {
  if (travel === 0) return 'shut gate';
  if (travel >= RIGHT_OUT) return 'gate';
  return `gate, ${formatQuantity('fraction', 'us', travel).number}\u2009% open`;
}

function fromTo(from: number, to: number, system: UnitSystem): string {
  const { number } = formatQuantity('diameter', system, from);
  return `${number} to ${formatQuantity('diameter', system, to).text}`;
}
