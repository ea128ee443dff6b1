// What pipe a choice takes beyond what hangs already: new sections, lengthened ones, and those that are
// made of another pipe, which are bought whole.

import type { Pipe } from '../schema/section-schema.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { samePipe } from './choice.ts';

/** A length of one pipe. */
export interface BoughtPipe {
  readonly pipe: Pipe;
  /** [m] */
  readonly length: number;
}

/**
 * The pipe that is bought to get from one shop to another.
 *
 * @param before - the shop as it hangs
 * @param after - the shop as it is to be
 * @returns each pipe with its length in all, in the order in which they are met
 */
export function pipeBought(
  before: Pick<Shop, 'sections'>,
  after: Pick<Shop, 'sections'>,
): readonly BoughtPipe[] {
  const bought: { readonly pipe: Pipe; length: number }[] = [];
  for (const { id, pipe, length } of after.sections) {
    const old = before.sections.find((section) => section.id === id);
    const hangs = old !== undefined && samePipe(old.pipe, pipe) ? old.length : 0;
    const more = Math.max(0, length - hangs);
    if (more === 0) continue;
    const known = bought.find((each) => samePipe(each.pipe, pipe));
    if (known === undefined) bought.push({ pipe, length: more });
    else known.length += more;
  }
  return bought;
}
