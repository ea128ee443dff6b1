// A pipe as it is bought: a family and a size of the catalogue, or a pipe of the maker's own, known by
// its inside diameter and its wall.

import { findPipe } from '../../duct/catalogue.ts';
import type { Pipe } from '../schema/section-schema.ts';

/** Begins the family of a pipe that is not in the catalogue. */
export const OWN_FAMILY = 'own';

/** One kind of pipe or hose in one size. */
export interface StockPipe {
  /** A family of the catalogue, or 'own-' and the roughness of the wall. */
  readonly family: string;
  /** A size of that family, or the inside diameter in millimetres. */
  readonly size: string;
  readonly kind: 'pipe' | 'hose';
  /** Inside diameter [m] */
  readonly diameter: number;
  /** Roughness of the wall, which tells apart pipes of the maker's own [m] */
  readonly roughness: number;
}

/**
 * The pipe of a section, as it is bought.
 *
 * @param pipe - the pipe as the document states it
 * @returns family and size
 * @throws RangeError if the catalogue does not have the pipe
 */
export function stockPipe(pipe: Pipe): StockPipe {
  if (pipe.kind === 'custom') {
    const { diameter, roughness } = pipe;
    const family = `${OWN_FAMILY}-${millimetres(roughness, 1e4)}`;
    return { family, size: diameterKey(diameter), kind: 'pipe', diameter, roughness };
  }
  const found = findPipe(pipe.family, pipe.size);
  if (found === undefined) throw new RangeError(`no pipe ${pipe.family} ${pipe.size} in the table`);
  const { family, size, kind, diameter, roughness } = found;
  return { family, size, kind, diameter, roughness };
}

/**
 * The part of a key that names a pipe.
 *
 * @param pipe - a pipe as it is bought
 * @returns such as 'galvanised-spiral-6in'
 */
export function pipeKey({ family, size }: Pick<StockPipe, 'family' | 'size'>): string {
  return `${family}-${size}`;
}

/**
 * The part of a key that names a diameter.
 *
 * @param diameter - inside diameter [m]
 * @returns such as '127mm'
 */
export function diameterKey(diameter: number): string {
  return millimetres(diameter, 10);
}

/**
 * Whether two pipes are asked for by the same size, so that a sleeve joins them and no cone: the same
 * word in the trade, or the same inside diameter.
 *
 * @param one - a pipe
 * @param other - another
 * @returns true if it is the same size
 */
export function isSameSize(one: StockPipe, other: StockPipe): boolean {
  return one.size === other.size || one.diameter === other.diameter;
}

/** Rounded to a part of a millimetre. */
function millimetres(length: number, parts: number): string {
  return `${Math.round(1000 * length * parts) / parts}mm`;
}
