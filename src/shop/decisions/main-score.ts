// How good a main is: how many drops are served over all states, then the room that is left, then how
// little pipe it takes.

import { travelsWhenOpen, usualStates } from '../gate-state.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { modelOf } from '../shop-model.ts';
import { quickShop, quickVerdict, solveQuickly } from './quick-states.ts';
import { isServed } from './solved-states.ts';

/** How good a main is: the first number that differs decides. */
export interface MainScore {
  /** Open drops that are served, counted over all states [-] */
  readonly served: number;
  /** Open drops in all states [-] */
  readonly asked: number;
  /** The least that any of them has of what it needs: speed over the low end, flow over need [-] */
  readonly room: number;
  /** Area of the wall of the main [m²] */
  readonly wall: number;
}

/**
 * How well a shop serves its drops.
 *
 * @param shop - a shop in order
 * @param atLeast - how many have to be served for it to count; fewer are not told apart [-]
 * @returns drops that are served over each alone and all saved gate sets, and the least room [-];
 *   undefined as soon as it is certain that fewer are served than that
 */
export function servedIn(shop: Shop, atLeast = 0): Omit<MainScore, 'wall'> | undefined {
  const quick = quickShop(modelOf(shop));
  const { low } = shop.carryingRange;
  const states = usualStates(shop).map(({ open }) => travelsWhenOpen(shop.drops, open));
  const asked = states.flat().filter((travel) => travel > 0).length;
  let [served, failed, room] = [0, 0, Number.POSITIVE_INFINITY];
  for (const travels of states) {
    const isSolved = solveQuickly(quick, travels) === 'solved';
    for (const [i, travel] of travels.entries()) {
      if (travel === 0) continue;
      const verdict = isSolved ? quickVerdict(quick, i, travel) : 'short';
      if (isServed({ verdict })) served += 1;
      else failed += 1;
      const { flow, slowest } = quick.figures;
      const need = quick.model.ducts.drops[i]!.need ?? 0;
      const shares = [low > 0 ? slowest / low : room, need > 0 ? flow / need : room];
      room = Math.min(room, ...(isSolved ? shares : [0]));
    }
    if (asked - failed < atLeast) return undefined;
  }
  return { served, asked, room };
}

/** Room that differs by less is alike, and the main with less pipe is better [-]. */
const ALIKE = 1e-3;

/**
 * Whether one main is better than another.
 *
 * @param a - one
 * @param b - the other, if there is one
 * @returns true where it is
 */
export function isBetterMain(a: MainScore, b: MainScore | undefined): boolean {
  if (b === undefined) return true;
  if (a.served !== b.served) return a.served > b.served;
  if (Math.abs(a.room - b.room) > ALIKE) return a.room > b.room;
  return a.wall < b.wall;
}
