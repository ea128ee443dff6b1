// What of the answer on another main is doubted: what it does to each drop, without its figures. It is a
// small part, and goes to a worker at once.

import type { Choice } from './choice.ts';
import type { MainSizes } from './main-sizes.ts';
import type { EffectKind } from './main-verdict.ts';

/** The main in some sizes, as much of it as is doubted. */
export interface DoubtedMains {
  readonly rows: readonly {
    readonly choice: Choice;
    readonly drops: readonly DoubtedDrop[];
  }[];
}

/** What the main does to a drop. */
export interface DoubtedDrop {
  readonly id: string;
  readonly kind: EffectKind;
  /** Second gates that keep its way clean; only the first is asked for. */
  readonly bleeds: readonly { readonly drop: string }[];
}

/**
 * What of the main in some sizes is doubted.
 *
 * @param sizes - the answer with its figures
 * @returns the part of it that is doubted
 */
export function doubtedMains({ rows }: MainSizes): DoubtedMains {
  const firstOf = ({ id, kind, bleeds }: DoubtedDrop): DoubtedDrop => ({
    id,
    kind,
    bleeds: bleeds.slice(0, 1).map(({ drop }) => ({ drop })),
  });
  return { rows: rows.map(({ choice, drops }) => ({ choice, drops: drops.map(firstOf) })) };
}
