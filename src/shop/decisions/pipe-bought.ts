// What pipe a choice takes beyond what hangs already: new sections, lengthened ones, and those that are
// made of another pipe, which are bought whole. What is cut off elsewhere is used again.

import type { Pipe } from '../schema/section-schema.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { samePipe } from './choice.ts';

/** A length of one pipe. */
export interface BoughtPipe {
  readonly pipe: Pipe;
  /** [m] */
  readonly length: number;
}

/** A shorter length is none [m]. */
const LEAST = 1e-6;

/**
 * Pipe in a shop that another one doesn't have: sections that are new, longer, or of another pipe.
 *
 * @param from - the shop as it is
 * @param to - the shop as it would be
 * @returns the pipes in the order of the sections; what is cut off elsewhere is not counted against it
 */
export function pipeBought(
  from: Pick<Shop, 'sections'>,
  to: Pick<Shop, 'sections'>,
): readonly BoughtPipe[] {
  const bought: { pipe: Pipe; length: number }[] = [];
  const spare = cutOff(from, to);
  for (const { id, pipe, length } of to.sections) {
    const old = from.sections.find((section) => section.id === id);
    const had = old !== undefined && samePipe(old.pipe, pipe) ? old.length : 0;
    let more = length - had;
    // A section that was cut in two is not bought anew.
    for (const piece of spare) {
      if (more <= 0 || !samePipe(piece.pipe, pipe)) continue;
      const used = Math.min(more, piece.length);
      piece.length -= used;
      more -= used;
    }
    if (more <= LEAST) continue;
    const same = bought.find((each) => samePipe(each.pipe, pipe));
    if (same) same.length += more;
    else bought.push({ pipe, length: more });
  }
  return bought;
}

/** What sections that stay of the same pipe have lost of their length. */
function cutOff(from: Pick<Shop, 'sections'>, to: Pick<Shop, 'sections'>) {
  return from.sections.flatMap(({ id, pipe, length }) => {
    const now = to.sections.find((section) => section.id === id);
    const isCut = now !== undefined && samePipe(now.pipe, pipe) && now.length < length;
    return isCut ? [{ pipe, length: length - now.length }] : [];
  });
}
