// How sure the verdicts on another main are.

import { type Study } from '../../study/progress.ts';
import { type NamedState, usualStates } from '../gate-state.ts';
import type { Shop } from '../schema/shop-schema.ts';
import { modelOf } from '../shop-model.ts';
import { shareOf } from './band.ts';
import { editOf } from './choice.ts';
import {
  doubtCases,
  type DoubtOptions,
  doubtStudy,
  type DropDoubt,
  type StateDoubt,
} from './doubt.ts';
import type { DoubtedDrop, DoubtedMains } from './doubted-mains.ts';
import { effectOf, isEnoughAir } from './main-verdict.ts';
import { isServed } from './solved-states.ts';

/** How sure it is what another main does to a drop. */
export interface EffectDoubt {
  readonly id: string;
  /** Part of the cases in which it does the same as with nothing off [-] */
  readonly holds: number;
}

/** One size of the main, doubted. */
export interface MainDoubt {
  /** Every drop alone, then every saved gate set. */
  readonly states: readonly StateDoubt[];
  /** In the order of the document. */
  readonly effects: readonly EffectDoubt[];
}

/** Today's main and every other size. */
export interface MainDoubts {
  readonly today: readonly StateDoubt[];
  /** In the order of the sizes. */
  readonly rows: readonly MainDoubt[];
}

/**
 * The mains of a table, doubted. Of second gates the one is asked for that was named first.
 *
 * @param shop - the shop
 * @param sizes - the main in every size, as {@link doubtedMains} gives it
 * @param options - how many cases, which, and how far things are off
 * @returns a study of all sizes
 */
export function* mainDoubtStudy(
  shop: Shop,
  sizes: DoubtedMains,
  options: DoubtOptions = {},
): Study<MainDoubts> {
  const usual = usualStates(shop);
  const pairs = new Map<string, NamedState>();
  for (const { drops } of sizes.rows) {
    for (const drop of drops) {
      const open = pairOf(drop);
      if (open.length === 2) pairs.set(open.join(), { kind: 'gate set', name: '', open });
    }
  }
  const states = [...usual, ...pairs.values()];
  const pairAt = new Map([...pairs.keys()].map((key, i) => [key, usual.length + i]));
  const shops = [shop, ...sizes.rows.map(({ choice }) => editOf(choice)(shop))];
  const doubts = yield* doubtStudy(shops, [modelOf(shop).curve], states, options);
  const [today, ...rows] = doubts.map(([only]) => only!);
  const total = (doubtCases(options).length + 1) * shops.length;
  const doubted: MainDoubt[] = [];
  for (const [k, row] of rows.entries()) {
    const effects = sizes.rows[k]!.drops.map((drop, i) => {
      const pair = row[pairAt.get(pairOf(drop).join()) ?? -1];
      return effectDoubt(drop, today![i]!, row[i]!, pair);
    });
    doubted.push({ states: row.slice(0, usual.length), effects });
    yield { done: total, total };
  }
  return { today: today!.slice(0, usual.length), rows: doubted };
}

function pairOf({ id, bleeds }: DoubtedDrop): readonly string[] {
  return [id, ...bleeds.slice(0, 1).map(({ drop }) => drop)];
}

function effectDoubt(
  { id, kind }: DoubtedDrop,
  today: StateDoubt,
  then: StateDoubt,
  pair: StateDoubt | undefined,
): EffectDoubt {
  const before = casesOf(today, id);
  const after = casesOf(then, id);
  const both = pair === undefined ? [] : casesOf(pair, id);
  const rounds = [...before.keys()].slice(1);
  const holds = shareOf(rounds, (round) => {
    const [was, is, paired] = [before[round]!, after[round]!, both[round]];
    const hasBleed = paired !== undefined && isServed(paired) && isEnoughAir(was, paired.flow);
    return effectOf(was, is, hasBleed) === kind;
  });
  return { id, holds };
}

function casesOf({ drops }: StateDoubt, id: string) {
  const { verdicts, figures } = drops.find((drop) => drop.id === id)!
    .cases satisfies DropDoubt['cases'];
  return verdicts.map((verdict, round) => ({
    verdict,
    flow: figures.flow[round]!,
    slowest: { velocity: figures.slowest[round]! },
  }));
}
